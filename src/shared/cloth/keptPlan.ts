import { type Inches, longer, same } from '../measure/inches.ts';
import type { KeptPlan } from '../pattern/keptPlan.ts';
import type { Pattern } from '../pattern/schema.ts';
import type { Planner } from './cuttingPlan.ts';
import type { LetteredKind } from './planPieces.ts';
import type { Kind, Laid, Packed } from './strips/kinds.ts';
import { planStrips, type StripPlan } from './strips/planStrips.ts';

/** The plan that is kept for one fabric of one size; nothing when there is none. */
export function keptFor({ plans }: Pattern, size: string, fabric: string): KeptPlan | undefined {
  return plans?.find((plan) => plan.size === size && plan.fabric === fabric);
}

/**
 * Plans as usual, but takes a kept plan when it cuts exactly what is asked for, from this width, and the usual plan is no
 * shorter. A kept plan for other pieces is passed over without a word: the pattern has changed since. One whose bound is more than
 * the usual plan takes is disproved by it: the usual one is taken and marked, so that it can be told.
 */
export function plannerWith(kept: KeptPlan | undefined): Planner {
  if (kept === undefined) return planStrips;
  return (kinds, width) => {
    const plan = soundPlan(kept, kinds as readonly LetteredKind[], width);
    const live = planStrips(kinds, width);
    if (plan !== null && longer(kept.bound, Math.min(live.length, plan.length))) return { ...live, disproved: true };
    if (plan === null || longer(plan.length, live.length)) return live;
    const bound = Math.min(plan.length, Math.max(plan.bound, live.bound));
    return { ...plan, bound, proven: same(plan.length, bound) };
  };
}

/** The kept plan as one for these pieces; null unless it cuts each of them exactly as often as is asked, within the cloth. */
function soundPlan(kept: KeptPlan, kinds: readonly LetteredKind[], width: Inches): StripPlan | null {
  if (!same(kept.width, width)) return null;
  const left = kinds.map(({ count }) => count);
  const strips: Packed[] = [];
  for (const { height, times, pieces } of kept.strips) {
    const laid: Laid[] = [];
    let reach = 0;
    for (const piece of pieces) {
      const kind = kinds.findIndex((one, i) => (left[i] as number) > 0 && isOf(piece, one));
      const of = kinds[kind];
      if (of === undefined || longer(piece.height, height)) return null;
      left[kind] = (left[kind] as number) - piece.count * times;
      reach += piece.width * piece.count;
      const turned = !same(piece.width, of.width);
      laid.push({ lie: { kind, turned, width: piece.width, height: piece.height }, count: piece.count });
    }
    if (longer(reach, width)) return null;
    strips.push({ height, times, laid });
  }
  if (left.some((count) => count !== 0)) return null;
  const length = strips.reduce((sum, { height, times }) => sum + height * times, 0);
  const bound = Math.min(length, kept.bound);
  return { strips, length, bound, proven: same(length, bound) };
}

function isOf(piece: KeptPlan['strips'][number]['pieces'][number], kind: LetteredKind): boolean {
  if (piece.letter !== kind.letter) return false;
  const lies = (w: Inches, h: Inches) => same(piece.width, w) && same(piece.height, h);
  return lies(kind.width, kind.height) || (kind.turns && lies(kind.height, kind.width));
}

/** A plan of strips in the form in which a pattern keeps it. */
export function keptPlan(
  size: string,
  fabric: string,
  kinds: readonly (Kind & { readonly letter: string })[],
  width: Inches,
  plan: StripPlan,
): KeptPlan {
  const strips = plan.strips.map(({ height, times, laid }) => ({
    height,
    times,
    pieces: laid.map(({ lie, count }) => {
      return { letter: kinds[lie.kind]?.letter ?? '', width: lie.width, height: lie.height, count };
    }),
  }));
  return { size, fabric, width, bound: plan.bound, strips };
}
