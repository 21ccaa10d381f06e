import { doubleArea } from '../drawing/drawing.ts';
import type { Inches } from '../measure/inches.ts';
import { rulerOn } from '../measure/ruler.ts';
import { count, given, minus, over, plus, rounded, type Traced, times } from '../measure/traced.ts';
import { clothOf as clothOfPatch, whole, workOf } from '../piecing/allowance/work.ts';
import { isHanded } from '../piecing/likeness.ts';
import type { Cut, MethodPlan, NamedMethod, Scale } from '../piecing/method.ts';
import { methodNamed, methodsFor } from '../piecing/methods/index.ts';
import { exactly } from '../piecing/methods/sums.ts';
import type { Unit } from '../piecing/piecing.ts';
import { piecesInEach, runsOf, type SizedUnit } from '../quilt/sized.ts';

/** What one way of making a unit asks for all of that unit in one size. */
export interface MethodPrice {
  readonly method: NamedMethod;
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
  /** Minutes of trimming to size: the trims counted, each at the house's estimate. */
  readonly trimming: Traced;
  /** Square inches that are cut and end in no patch and no seam allowance; what is spare counts as well. */
  readonly waste: Traced;
}

/** One of the cut sizes, with how many the whole quilt takes. */
export interface PricedCut {
  readonly cut: Cut;
  readonly count: Traced;
  /** The cut size before any rounding to the ruler, inches. */
  readonly exact: { readonly width: Inches; readonly height: Inches };
}

/** Units of this kind in the whole quilt, as "4 in a block × 12 blocks". */
export function unitsNeeded(sized: SizedUnit, blocks: number): Traced {
  return times(count(sized.perBlock, 'in a block'), count(blocks, 'blocks'));
}

/**
 * Every way of making a unit and what it costs, the chosen one first.
 * @param scale the size's grid in inches, the seam and the ruler's step
 * @param usableWidth of the cloth, inches
 * @param block the units of the block it stands in: those it takes are made as they are there
 */
export function methodPrices(
  sized: SizedUnit,
  scale: Scale,
  usableWidth: Inches,
  block: readonly SizedUnit[] = [],
): readonly MethodPrice[] {
  const own = { ...scale, oversize: sized.oversize };
  const least = leastCloth(sized, scale);
  const { told } = rulerOn(scale.step);
  const planOf = (inside: Unit) => {
    const known = block.find(({ unit }) => unit.key === inside.key);
    return known?.plan ?? methodsFor(inside)[0]?.plan(inside, scale);
  };
  const price = (method: NamedMethod, plan: MethodPlan) =>
    priceOf(sized, method, plan, { usableWidth, least, told }, madeFor(sized, plan, planOf));
  return [
    price(sized.method, sized.plan),
    ...sized.others.flatMap((method) => {
      const plan = methodNamed(method.id)?.plan(sized.unit, own);
      return plan === undefined ? [] : [price(method, plan)];
    }),
  ];
}

/** Square inches the units needed take when every patch has its seam allowance and nothing beyond: no way needs less. */
function leastCloth({ unit, needed }: SizedUnit, { grid, seam }: Scale): number {
  const work = workOf(unit, grid, { seam, points: 'blunted' });
  const one = [...whole(work)].reduce(
    (sum, patch) => sum + doubleArea(clothOfPatch(work, patch, new Set([patch]))) / 2,
    0,
  );
  return one * needed;
}

/** What trimming one thing to size takes, minutes: the house's own estimate. */
const TRIM_MINUTES = 0.5;

/** What is made in one way: so many units, and the batches they come in. */
interface Made {
  readonly plan: MethodPlan;
  readonly units: number;
  readonly batches: Traced;
}

/** What is made for all of a unit: batches of itself, and before them of the units it takes. */
function madeFor(
  { needed, reversed }: SizedUnit,
  plan: MethodPlan,
  planOf: (unit: Unit) => MethodPlan | undefined,
): readonly [Made, ...Made[]] {
  const before = (plan.takes ?? []).flatMap(({ unit, count: inEach }) => {
    const its = planOf(unit);
    return its === undefined ? [] : [made(its, inEach * needed, isHanded(unit) ? inEach * reversed : 0)];
  });
  return [made(plan, needed, reversed), ...before];
}

/** So many units in whole batches; each hand in its own, where a batch has one. */
function made(plan: MethodPlan, units: number, reversed: number): Made {
  const [first, ...rest] = runsOf(plan, units, reversed).map(({ mirrored, needed }) => {
    const many = count(needed, mirrored ? 'mirror images' : 'units');
    return rounded(over(many, count(plan.yield, 'from a batch')), 1, 'up');
  });
  const batches = first === undefined ? count(0, 'batches') : rest.length === 0 ? first : plus(first, ...rest);
  return { plan, units, batches };
}

function piecesOf(cut: Cut, { plan, units, batches }: Made): Traced {
  const inEach = piecesInEach(cut, plan);
  if (inEach !== null) return times(count(inEach, 'for a unit'), count(units, 'units'));
  return times(count(cut.count, 'for a batch'), batches);
}

/** What all ways of one unit are measured against. */
interface Against {
  readonly usableWidth: Inches;
  /** Square inches no way can do without. */
  readonly least: number;
  /** What lengths that are only told are rounded to. */
  readonly told: Inches;
}

function priceOf(
  sized: SizedUnit,
  method: NamedMethod,
  plan: MethodPlan,
  { usableWidth, least, told }: Against,
  all: readonly [Made, ...Made[]],
): MethodPrice {
  const cuts = all.flatMap((one) =>
    one.plan.cuts.map((cut) => ({
      cut,
      count: piecesOf(cut, one),
      exact: { width: exactly(cut.width), height: exactly(cut.height) },
    })),
  );
  const trims = all.reduce((sum, one) => sum + trimsIn(one.plan) * one.batches.value, 0);
  const [own] = all;
  const [first, ...rest] = cuts.map((priced) => priced.count);
  return {
    method,
    chosen: method.id === sized.method.id,
    plan,
    cuts,
    pieces: first === undefined ? count(0, 'pieces') : plus(first, ...rest),
    spare: own.batches.value * plan.yield - sized.needed,
    cloth: clothOf(cuts, usableWidth, told),
    trimming: times(count(trims, 'to trim'), count(TRIM_MINUTES, 'minutes each')),
    waste: minus(given(areaOf(cuts), 'cut', 'area'), given(least, 'in patches and seams', 'area')),
  };
}

/** Things trimmed in one batch. */
function trimsIn({ trims, trimmed, yield: units }: MethodPlan): number {
  return trims ?? (trimmed ? units : 0);
}

function areaOf(cuts: readonly PricedCut[]): number {
  return cuts.reduce((total, { cut, count: many }) => total + cut.width.value * cut.height.value * many.value, 0);
}

function clothOf(cuts: readonly PricedCut[], usableWidth: Inches, told: Inches): Traced {
  return rounded(over(given(areaOf(cuts), 'of pieces', 'area'), given(usableWidth, 'usable width')), told, 'near');
}
