import { same } from '../measure/inches.ts';
import { given, named } from '../measure/traced.ts';
import type { Pattern } from '../pattern/schema.ts';
import type { FabricNeed, PieceLine } from './cloth.ts';
import { cuttingPlan } from './cuttingPlan.ts';
import { BINDING_KEY } from './letters.ts';
import { yardsFor } from './yards.ts';

/**
 * What a buyer needs of each fabric that is cut, in the pattern's order: one plan for all its uses in blocks, borders and
 * binding. Yards are the plan's length and the squaring allowance, rounded up last. Backing is bought by itself.
 */
export function fabricNeeds(lines: readonly PieceLine[], pattern: Pattern): readonly FabricNeed[] {
  const byFabric = new Map<string, PieceLine[]>(pattern.fabrics.map((fabric) => [fabric.id, []]));
  for (const line of lines) byFabric.set(line.fabric, [...(byFabric.get(line.fabric) ?? []), line]);
  return [...byFabric].filter(([, own]) => own.length > 0).map(([fabric, own]) => fabricNeed(fabric, own, pattern));
}

function fabricNeed(fabric: string, lines: readonly PieceLine[], pattern: Pattern): FabricNeed {
  const { house } = pattern;
  const plan = cuttingPlan(fabric, lines, house);
  const yards = yardsFor(named(plan.length, 'of strips'), house);
  const least = same(yards.value, yardsFor(given(plan.bound, 'of strips'), house).value);
  return { fabric, uses: usesOf(lines, pattern), plan, yards, least };
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
