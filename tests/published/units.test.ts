import { describe, expect, it } from 'vitest';
import { same } from '../../src/shared/measure/inches.ts';
import { plain, type Traced } from '../../src/shared/measure/traced.ts';
import type { Cut, Method, MethodPlan, Scale } from '../../src/shared/piecing/method.ts';
import { methodNamed } from '../../src/shared/piecing/methods/index.ts';
import { exactly } from '../../src/shared/piecing/methods/sums.ts';
import type { Unit } from '../../src/shared/piecing/piecing.ts';
import {
  corner,
  flipped,
  fourPatch,
  geese,
  hst,
  QUARTER,
  SEVEN_AND_A_HALF_MM,
  SIX_MM,
  square,
  THREE_EIGHTHS,
} from '../piecing/someUnits.ts';

/** Sizes in these tests are finished inches: one grid unit is one inch. */
const INCH: Scale = { grid: 1, ...QUARTER };
const MM = 1 / 25.4;

function made(id: string, unit: Unit, scale: Scale = INCH): MethodPlan {
  const method = methodNamed(id) as Method;
  expect(method.makes(unit)).toBe(true);
  return method.plan(unit, scale);
}

const cut = (plan: MethodPlan, use: string): Cut => plan.cuts.find((one) => one.use === use) as Cut;
const sizeOf = (piece: Cut) => [piece.width.value, piece.height.value];
const millimetres = (length: Traced) => length.value / MM;

describe('a plain piece', () => {
  // Common practice: seam allowance 1/4, unfinished = finished + 1/2; 3 → 3½.
  it('of 3 finished is cut 3½', () => {
    const plan = made('plain-cut', square(3));
    expect(sizeOf(cut(plan, 'square'))).toEqual([3.5, 3.5]);
    expect(plain(plan.unfinished)).toEqual({ width: 3.5, height: 3.5 });
  });
});

describe('a log', () => {
  // Brunswick Quilters (guild), log cabin block: strips 1¾ cut; the first log is 3, the last 10½. A 1¼ finished log of
  // 2½ and one of 10.
  it.each([
    [2.5, 3],
    [10, 10.5],
  ])('of %s finished on a 1¾ strip is cut %s long', (finished, length) => {
    const plan = made('log-cut', { kind: 'log', key: 'l', width: finished, height: 1.25, role: 'a' });
    expect(sizeOf(cut(plan, 'log'))).toEqual([length, 1.75]);
  });
});

describe('half-square triangles', () => {
  // North Hampshire Quilters (guild), block instructions: finished + 7/8; 3 → 3⅞, trims to 3½.
  it('of 3 finished come two from a pair of 3⅞ squares and trim to 3½', () => {
    const plan = made('hst-two', hst(3));
    expect(plan.cuts.map(sizeOf)).toEqual([
      [3.875, 3.875],
      [3.875, 3.875],
    ]);
    expect(plan.yield).toBe(2);
    expect(plan.trimmed).toBe(true);
    expect(plain(plan.unfinished)).toEqual({ width: 3.5, height: 3.5 });
  });

  // Quilting magazine, August 2019 issue (scan): 1½ → 4¾ square → eight units, 2 unfinished; 15 pairs → 120.
  it('of 1½ finished come eight from a pair of 4¾ squares and trim to 2; fifteen pairs give 120', () => {
    const plan = made('hst-eight', hst(1.5));
    expect(plan.cuts.map(sizeOf)).toEqual([
      [4.75, 4.75],
      [4.75, 4.75],
    ]);
    expect(plan.yield).toBe(8);
    expect(plain(plan.unfinished)).toEqual({ width: 2, height: 2 });
    expect(15 * plan.yield).toBe(120);
  });

  // Computed: s(2 + √2), 2.41421356… being 1 + √2 and 3.41421356… being 2 + √2.
  it.each([
    ['¼ inch', QUARTER, 0.25 * 3.414213562],
    ['⅜ inch', THREE_EIGHTHS, 0.375 * 3.414213562],
    ['6 mm', SIX_MM, 6 * MM * 3.414213562],
    ['7.5 mm', SEVEN_AND_A_HALF_MM, 7.5 * MM * 3.414213562],
  ])('with a seam of %s add exactly s(2 + √2) before rounding', (_, house, add) => {
    const plan = made('hst-two', hst(3), { grid: 1, ...house });
    expect(exactly(plan.cuts[0]?.width as Traced)).toBeCloseTo(3 + add, 8);
  });

  // Computed, rounded up to the ruler; the millimetre row of 7.5 is 25.6 → 26 mm.
  it.each([
    ['¼ inch on eighths', { grid: 1, ...QUARTER }, 3, 3.875],
    ['⅜ inch on eighths', { grid: 1, ...THREE_EIGHTHS }, 3, 3 + 1.375],
    ['6 mm on millimetres', { grid: MM, ...SIX_MM }, 60, (60 + 21) * MM],
    ['7.5 mm on millimetres', { grid: MM, ...SEVEN_AND_A_HALF_MM }, 60, (60 + 26) * MM],
  ])('with a seam of %s are cut at the next mark', (_, scale, finished, printed) => {
    const plan = made('hst-two', hst(finished), scale);
    expect(same(plan.cuts[0]?.width.value as number, printed)).toBe(true);
  });
});

describe('flying geese four at a time', () => {
  // Quilter's World, June 2024: large = finished width + 1¼, four small = finished height + 7/8; 2×4 → 5¼ and 2⅞.
  // 1×2 and 3×6: computed.
  it.each([
    [2, 5.25, 2.875],
    [1, 3.25, 1.875],
    [3, 7.25, 3.875],
  ])('%s high come from a large square of %s and four small ones of %s', (height, large, small) => {
    const plan = made('geese-four', geese(height));
    expect(sizeOf(cut(plan, 'large square'))).toEqual([large, large]);
    expect(cut(plan, 'large square').count).toBe(1);
    expect(sizeOf(cut(plan, 'small square'))).toEqual([small, small]);
    expect(cut(plan, 'small square').count).toBe(4);
    expect(plan.yield).toBe(4);
    expect(plain(plan.unfinished)).toEqual({ width: 2 * height + 0.5, height: height + 0.5 });
  });

  // Computed: s(2 + 2√2) = 4.82842712… s. In the millimetre row of 7.5: 36.2 → 37 mm.
  it.each([
    ['¼ inch', { grid: 1, ...QUARTER }, 0.25 * 4.828427125],
    ['⅜ inch', { grid: 1, ...THREE_EIGHTHS }, 0.375 * 4.828427125],
    ['6 mm', { grid: 1, ...SIX_MM }, 6 * MM * 4.828427125],
    ['7.5 mm', { grid: 1, ...SEVEN_AND_A_HALF_MM }, 7.5 * MM * 4.828427125],
  ])('with a seam of %s add exactly s(2 + 2√2) to the width before rounding', (_, scale, add) => {
    const plan = made('geese-four', geese(2), scale);
    expect(exactly(cut(plan, 'large square').width)).toBeCloseTo(4 + add, 8);
  });

  it('with a seam of 7.5 mm, 50 × 100 mm, come from 137 mm and 76 mm squares', () => {
    const plan = made('geese-four', geese(50), { grid: MM, ...SEVEN_AND_A_HALF_MM });
    expect(millimetres(cut(plan, 'large square').width)).toBeCloseTo(137, 6);
    expect(millimetres(cut(plan, 'small square').width)).toBeCloseTo(76, 6);
  });
});

describe('stitch and flip', () => {
  // American Patchwork & Quilting, block pattern, and common practice: 2×4 unit: 2½×4½ with 2½ squares.
  it('makes a 2 × 4 unit from a 2½ × 4½ rectangle and 2½ squares', () => {
    const unit = flipped(4, 2, [corner('top-left', 2), corner('top-right', 2)]);
    const plan = made('corners-flip', unit);
    expect(sizeOf(cut(plan, 'rectangle'))).toEqual([4.5, 2.5]);
    expect(sizeOf(cut(plan, 'corner square'))).toEqual([2.5, 2.5]);
    expect(cut(plan, 'corner square').count).toBe(2);
  });

  it('makes flying geese of 2 × 4 from the same pieces', () => {
    const plan = made('geese-flip', geese(2));
    expect(sizeOf(cut(plan, 'rectangle'))).toEqual([4.5, 2.5]);
    expect(sizeOf(cut(plan, 'small square'))).toEqual([2.5, 2.5]);
    expect(cut(plan, 'small square').count).toBe(2);
    expect(plain(plan.unfinished)).toEqual({ width: 4.5, height: 2.5 });
  });
});

describe('four-patches', () => {
  // Common practice: a four-patch of 2½ squares is 4½ before it is sewn in; n strips w wide measure n(w − ½) + ½.
  it('of 4 finished come from 2½ squares and measure 4½', () => {
    const plan = made('four-patch-squares', fourPatch(4));
    expect(plan.cuts.map(sizeOf)).toEqual([
      [2.5, 2.5],
      [2.5, 2.5],
    ]);
    expect(plain(plan.unfinished)).toEqual({ width: 4.5, height: 4.5 });
  });

  it('come from 2½ strips in a strip set that is 4½ wide, sub-cut every 2½', () => {
    const plan = made('four-patch-strips', fourPatch(4));
    expect(plan.cuts.map(({ width, height }) => [width.value, height.value])).toEqual([
      [2.5, 2.5],
      [2.5, 2.5],
    ]);
    expect(plan.stages[1]?.scene.height).toBeCloseTo(2 * (2.5 - 0.5) + 0.5, 9);
  });
});

describe('a churn dash', () => {
  // Quilting handbook pp. 10–11; Moonlight Quilters (guild): 6-inch block on a 3×3 grid cuts 2⅞, 1½×2½, 2½.
  it('of 6 inches is cut from 2⅞ squares, 1½ × 2½ rails and a 2½ centre', () => {
    const rail: Unit = { kind: 'plain', key: 'r', width: 2, height: 1, role: 'a' };
    expect(sizeOf(made('hst-two', hst(2)).cuts[0] as Cut)).toEqual([2.875, 2.875]);
    expect(sizeOf(made('plain-cut', rail).cuts[0] as Cut)).toEqual([2.5, 1.5]);
    expect(sizeOf(made('plain-cut', square(2)).cuts[0] as Cut)).toEqual([2.5, 2.5]);
  });
});
