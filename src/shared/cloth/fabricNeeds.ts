import { same } from '../measure/inches.ts';
import { given, named } from '../measure/traced.ts';
import type { Pattern } from '../pattern/schema.ts';
import { outsideBundle } from './bundle/outside.ts';
import type { Cloth, FabricNeed, PieceLine } from './cloth.ts';
import { cuttingPlan, type Planner } from './cuttingPlan.ts';
import { keptFor, plannerWith } from './keptPlan.ts';
import { BINDING_KEY } from './letters.ts';
import { type LetteredKind, laidFor } from './planPieces.ts';
import { partedFor, sheetNeed } from './sheetNeed.ts';
import { yardsFor } from './yards.ts';

/**
 * What a buyer needs of each fabric that is cut, in the pattern's order: one plan for all its uses in blocks, borders and
 * binding. Yards are the plan's length and the squaring allowance, rounded up last. Backing is bought by itself.
 * @param size the size's id: a plan that is kept for it is taken
 */
export function fabricNeeds(lines: readonly PieceLine[], pattern: Pattern, size: string): readonly FabricNeed[] {
  const byFabric = new Map<string, PieceLine[]>(pattern.fabrics.map((fabric) => [fabric.id, []]));
  for (const line of lines) byFabric.set(line.fabric, [...(byFabric.get(line.fabric) ?? []), line]);
  return [...byFabric]
    .filter(([, own]) => own.length > 0)
    .map(([fabric, own]) => fabricNeed(fabric, own, pattern, plannerWith(keptFor(pattern, size, fabric))));
}

/**
 * The same needs with plans that are proven as far as the planner goes: only those are planned again whose live plan is not
 * as short as its bound, and the better of both is kept.
 */
export function provenNeeds(cloth: Cloth, pattern: Pattern, planner: Planner): readonly FabricNeed[] {
  const lines = outsideBundle(cloth.pieces, pattern.bundle);
  return cloth.needs.map((need) => {
    if (need.plan.proven) return need;
    const own = lines.filter(({ fabric }) => fabric === need.fabric);
    const proven = fabricNeed(need.fabric, own, pattern, planner);
    return proven.plan.length.value <= need.plan.length.value ? proven : need;
  });
}

/** What is really laid on the yardage of one fabric, for its plan to be proven. */
export function kindsPlanned(
  cloth: Cloth,
  { bundle, fabrics, house }: Pattern,
  fabric: string,
): readonly LetteredKind[] {
  const lines = outsideBundle(cloth.pieces, bundle).filter((line) => line.fabric === fabric);
  const { rest } = partedFor(lines, fabrics.find(({ id }) => id === fabric)?.sheet);
  return rest.flatMap((line) => laidFor(line, house));
}

function fabricNeed(fabric: string, lines: readonly PieceLine[], pattern: Pattern, planner?: Planner): FabricNeed {
  const { house } = pattern;
  const sheet = pattern.fabrics.find(({ id }) => id === fabric)?.sheet;
  const { inSheets, rest } = partedFor(lines, sheet);
  const plan = cuttingPlan(fabric, rest, house, planner);
  // Where all of it comes from sheets there is nothing to square up.
  const nothing = rest.length === 0 && inSheets.length > 0;
  const yards = nothing ? given(0, 'from sheets', 'yard') : yardsFor(named(plan.length, 'of strips'), house);
  const least = nothing || same(yards.value, yardsFor(given(plan.bound, 'of strips'), house).value);
  const sheets = sheet === undefined || inSheets.length === 0 ? {} : { sheets: sheetNeed(inSheets, sheet) };
  return { fabric, uses: usesOf(lines, pattern), plan, yards, least, ...sheets };
}

/** What a fabric is for over several sizes, each use once: blocks first, then borders from the inside out, binding last. */
export function usesTogether(needs: readonly (FabricNeed | undefined)[]): readonly string[] {
  const uses = new Set(needs.flatMap((need) => need?.uses ?? []));
  const rank = (use: string) => (use === 'blocks' ? 0 : use === 'binding' ? 2 : 1);
  return [...uses].sort((a, b) => rank(a) - rank(b));
}

function usesOf(lines: readonly PieceLine[], pattern: Pattern): readonly string[] {
  const words = lines
    .flatMap((line) => line.use)
    .map(({ block, unit }) => {
      if (block !== null) return 'blocks';
      if (unit === BINDING_KEY) return 'binding';
      return (pattern.borders.find((border) => border.id === unit)?.name ?? unit).toLowerCase();
    });
  return [...new Set(words)];
}
