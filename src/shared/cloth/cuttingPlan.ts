import type { Inches } from '../measure/inches.ts';
import { count, given, plus, type Traced, times } from '../measure/traced.ts';
import type { House } from '../pattern/schema.ts';
import type { CuttingPlan, PieceLine, Strip } from './cloth.ts';
import { type LetteredKind, laidFor } from './planPieces.ts';
import type { Kind, Packed } from './strips/kinds.ts';
import { planStrips, type StripPlan } from './strips/planStrips.ts';

/** Whatever plans strips: at once, or with a proof. `disproved` when a plan that was kept claimed what cannot be. */
export type Planner = (kinds: readonly Kind[], width: Inches) => StripPlan & { readonly disproved?: true };

/** How one fabric is cut: strips across the usable width, with the proof of how little cloth can do. */
export function cuttingPlan(
  fabric: string,
  lines: readonly PieceLine[],
  house: House,
  planner: Planner = planStrips,
): CuttingPlan {
  const kinds = lines.flatMap((line) => laidFor(line, house));
  const plan = planner(kinds, house.usableWidth);
  const area = kinds.reduce((sum, kind) => sum + kind.width * kind.height * kind.count, 0);
  const cloth = plan.length * house.usableWidth;
  return {
    fabric,
    width: house.usableWidth,
    strips: plan.strips.map((strip) => lettered(strip, kinds)),
    stripCount: plan.strips.reduce((sum, strip) => sum + strip.times, 0),
    length: tracedLength(plan.strips),
    bound: plan.bound,
    proven: plan.proven,
    used: cloth === 0 ? 1 : area / cloth,
    ...(plan.disproved ? { disproved: true as const } : {}),
  };
}

function lettered(strip: Packed, kinds: readonly LetteredKind[]): Strip {
  const pieces = strip.laid.map(({ lie, count: many }) => {
    const letter = kinds[lie.kind]?.letter ?? '';
    return { letter, width: lie.width, height: lie.height, count: many };
  });
  return { height: strip.height, pieces, times: strip.times };
}

/** "5 strips × 3½ wide + 2 strips × 2½ wide". */
function tracedLength(strips: readonly Packed[]): Traced {
  const byHeight = new Map<number, number>();
  for (const { height, times: many } of strips) byHeight.set(height, (byHeight.get(height) ?? 0) + many);
  const parts = [...byHeight].map(([height, many]) =>
    times(count(many, many === 1 ? 'strip' : 'strips'), given(height, 'wide')),
  );
  const [first, ...rest] = parts;
  if (first === undefined) return given(0, 'of strips');
  return rest.length === 0 ? first : plus(first, ...rest);
}
