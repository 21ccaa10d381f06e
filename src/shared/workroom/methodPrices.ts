import type { Inches } from '../measure/inches.ts';
import { count, given, over, plus, rounded, type Traced, times } from '../measure/traced.ts';
import type { Cut, Method, MethodPlan, Scale } from '../piecing/method.ts';
import type { SizedUnit } from '../quilt/sized.ts';

/** What one way of making a unit asks for all of that unit in one size. */
export interface MethodPrice {
  readonly method: Method;
  /** The way the unit is made now. */
  readonly chosen: boolean;
  readonly plan: MethodPlan;
  readonly cuts: readonly PricedCut[];
  /** Pieces cut in all. */
  readonly pieces: Traced;
  /** Units made beyond those needed. */
  readonly spare: number;
  /** Length of cloth the pieces would fill with nothing left over: what two ways of making one unit differ by. */
  readonly cloth: Traced;
}

/** One of the cut sizes, with how many the whole quilt takes. */
export interface PricedCut {
  readonly cut: Cut;
  readonly count: Traced;
}

/** Units of this kind in the whole quilt, as "4 in a block × 12 blocks". */
export function unitsNeeded(sized: SizedUnit, blocks: number): Traced {
  return times(count(sized.perBlock, 'in a block'), count(blocks, 'blocks'));
}

/**
 * Every way of making a unit and what it costs, the chosen one first.
 * @param scale the size's grid in inches, the seam and the ruler's step
 * @param usableWidth of the cloth, inches
 */
export function methodPrices(sized: SizedUnit, scale: Scale, usableWidth: Inches): readonly MethodPrice[] {
  const price = (method: Method, plan: MethodPlan) => priceOf(sized, method, plan, usableWidth);
  return [
    price(sized.method, sized.plan),
    ...sized.others.map((method) => price(method, method.plan(sized.unit, scale))),
  ];
}

function priceOf(sized: SizedUnit, method: Method, plan: MethodPlan, usableWidth: Inches): MethodPrice {
  const batches = rounded(over(count(sized.needed, 'units'), count(plan.yield, 'from a batch')), 1, 'up');
  const cuts = plan.cuts.map((cut) => ({ cut, count: times(count(cut.count, 'for a batch'), batches) }));
  const [first, ...rest] = cuts.map((priced) => priced.count);
  return {
    method,
    chosen: method.id === sized.method.id,
    plan,
    cuts,
    pieces: first === undefined ? count(0, 'pieces') : plus(first, ...rest),
    spare: batches.value * plan.yield - sized.needed,
    cloth: clothOf(cuts, usableWidth),
  };
}

function clothOf(cuts: readonly PricedCut[], usableWidth: Inches): Traced {
  const area = cuts.reduce((total, { cut, count: many }) => total + cut.width.value * cut.height.value * many.value, 0);
  return rounded(over(given(area, 'square inches of pieces'), count(usableWidth, 'usable width')), 0.125, 'near');
}
