import { describe, expect, it } from 'vitest';
import { doubleArea } from '../../src/shared/drawing/drawing.ts';
import { inchesText } from '../../src/shared/measure/fraction.ts';
import { same } from '../../src/shared/measure/inches.ts';
import { explain, plain, type Traced } from '../../src/shared/measure/traced.ts';
import type { Cut, Method, MethodPlan, Scale } from '../../src/shared/piecing/method.ts';
import { methodNamed } from '../../src/shared/piecing/methods/index.ts';
import { exactly } from '../../src/shared/piecing/methods/sums.ts';
import type { Unit } from '../../src/shared/piecing/piecing.ts';
import {
  checkerboard,
  geese,
  halfRectangle,
  hst,
  ninePatch,
  QUARTER,
  qst,
  quarterCircle,
  rails,
  SEVEN_AND_A_HALF_MM,
  SIX_MM,
  squareInSquare,
  threePatch,
} from '../piecing/someUnits.ts';

/** Sizes in these tests are finished inches: one grid unit is one inch. */
const INCH: Scale = { grid: 1, ...QUARTER };
const MM = 1 / 25.4;

function made(id: string, unit: Unit, scale: Scale = INCH): MethodPlan {
  const method = methodNamed(id) as Method;
  expect(method.makes(unit)).toBe(true);
  return method.plan(unit, scale);
}

const sizes = (plan: MethodPlan) => plan.cuts.map(({ width, height }) => [width.value, height.value]);
const cut = (plan: MethodPlan, use: string): Cut => plan.cuts.find((one) => one.use === use) as Cut;

/** Computed: 1 + √2 = 2.414213562, 2 + √2 = 3.414213562, 2 + 2√2 = 4.828427125. */
const HALF = 3.414213562;
const QUARTERED = 4.828427125;
const SEAMS = [
  ['¼ inch', { grid: 1, ...QUARTER }, 0.25],
  ['6 mm', { grid: 1, ...SIX_MM }, 6 * MM],
  ['7.5 mm', { grid: 1, ...SEVEN_AND_A_HALF_MM }, 7.5 * MM],
] as const;

describe('half-square triangles', () => {
  // North Hampshire Quilters (guild), block instructions: one square cut once, or a pair sewn along the diagonal,
  // finished + 7/8: 3 → 3⅞, trims to 3½.
  it('of 3 finished come from 3⅞ squares cut once', () => {
    const plan = made('hst-triangles', hst(3));
    expect(sizes(plan)).toEqual([
      [3.875, 3.875],
      [3.875, 3.875],
    ]);
    expect(plan.yield).toBe(2);
    expect(plain(plan.unfinished)).toEqual({ width: 3.5, height: 3.5 });
  });

  // The same: cut oversize and trimmed, finished + 1⅛: 3 → 4⅛ → 3½.
  it('of 3 finished, cut larger and trimmed, come from 4⅛ squares and are trimmed to 3½', () => {
    const plan = made('hst-oversize', hst(3));
    expect(sizes(plan)).toEqual([
      [4.125, 4.125],
      [4.125, 4.125],
    ]);
    expect(plan.trimmed).toBe(true);
    expect(plain(plan.unfinished)).toEqual({ width: 3.5, height: 3.5 });
  });

  // Computed: a square sewn all round and quartered opens to a square whose diagonal is its side less two seams:
  // √2 × 3½ + ½ = 5.4497, up to 5½.
  it('of 3 finished come four from a pair of 5½ squares', () => {
    const plan = made('hst-four', hst(3));
    expect(sizes(plan)).toEqual([
      [5.5, 5.5],
      [5.5, 5.5],
    ]);
    expect(plan.yield).toBe(4);
    expect(exactly(plan.cuts[0]?.width as Traced)).toBeCloseTo(4.949747468 + 0.5, 8);
  });

  it.each(SEAMS)('from triangles add exactly s(2 + √2) with a seam of %s', (_, scale, seam) => {
    const plan = made('hst-triangles', hst(3), scale);
    expect(exactly(plan.cuts[0]?.width as Traced)).toBeCloseTo(3 + seam * HALF, 8);
  });
});

describe('quarter-square triangles', () => {
  // North Hampshire Quilters (guild): finished + 1¼: 3 → 4¼; oversize 4½.
  it.each(['qst-hst', 'qst-triangles'])('of 3 finished come from 4¼ squares: %s', (id) => {
    const plan = made(id, qst(3));
    expect(sizes(plan)).toEqual([
      [4.25, 4.25],
      [4.25, 4.25],
    ]);
    expect(plan.yield).toBe(2);
    expect(plain(plan.unfinished)).toEqual({ width: 3.5, height: 3.5 });
  });

  it('of 3 finished come from 4½ squares when ¼ is added to trim', () => {
    const plan = made('qst-hst', qst(3), { ...INCH, oversize: 0.25 });
    expect(plan.cuts[0]?.width.value).toBe(4.5);
  });

  it.each(SEAMS)('add exactly s(2 + 2√2) with a seam of %s', (_, scale, seam) => {
    for (const id of ['qst-hst', 'qst-triangles']) {
      expect(exactly(made(id, qst(3), scale).cuts[0]?.width as Traced)).toBeCloseTo(3 + seam * QUARTERED, 8);
    }
  });

  // Computed, rounded up to the millimetre: 60 + 29 = 89 (6 mm: 28.97), 60 + 37 = 97 (7.5 mm: 36.2 → 37).
  it.each([
    ['6 mm', SIX_MM, 89],
    ['7.5 mm', SEVEN_AND_A_HALF_MM, 97],
  ])('of 60 mm with a seam of %s are cut at the next millimetre', (_, house, printed) => {
    const plan = made('qst-triangles', qst(60), { grid: MM, ...house });
    expect(same(plan.cuts[0]?.width.value as number, printed * MM)).toBe(true);
  });

  // The same rules: the half from a square cut once (finished + 7/8), the quarters from squares cut twice (+ 1¼).
  it('of three patches, 3 finished, come from a 3⅞ square cut once and 4¼ squares cut twice', () => {
    const plan = made('three-patch-triangles', threePatch(3));
    expect(sizes(plan)).toEqual([
      [3.875, 3.875],
      [4.25, 4.25],
      [4.25, 4.25],
    ]);
    expect(plan.cuts.map(({ count }) => count)).toEqual([2, 1, 1]);
    expect(plan.yield).toBe(4);
  });
});

describe('flying geese one by one', () => {
  // Goose: a quarter of a square of finished width + 1¼; sky: half of a square of finished height + 7/8 (common practice;
  // the same squares as four at a time, Quilter's World, June 2024: 2×4 → 5¼ and 2⅞).
  it.each([
    [2, 5.25, 2.875],
    [1, 3.25, 1.875],
    [3, 7.25, 3.875],
  ])('%s high come from squares of %s and %s', (height, large, small) => {
    const plan = made('geese-triangles', geese(height));
    expect(cut(plan, 'large square').width.value).toBe(large);
    expect(cut(plan, 'small square').width.value).toBe(small);
    expect([cut(plan, 'large square').count, cut(plan, 'small square').count, plan.yield]).toEqual([1, 4, 4]);
  });

  it.each(SEAMS)('add exactly s(2 + 2√2) and s(2 + √2) with a seam of %s', (_, scale, seam) => {
    const plan = made('geese-triangles', geese(2), scale);
    expect(exactly(cut(plan, 'large square').width)).toBeCloseTo(4 + seam * QUARTERED, 8);
    expect(exactly(cut(plan, 'small square').width)).toBeCloseTo(2 + seam * HALF, 8);
  });
});

describe('a square in a square', () => {
  // Moonlight Quilters (guild), formula of the on-point settings: corners are squares of the middle/√2 + 7/8, cut once:
  // 4 → 3¾ (up to ⅛).
  it('with a middle of 4 finished takes 3¾ squares for its corners', () => {
    const plan = made('square-in-square-triangles', squareInSquare(4 * Math.SQRT2));
    expect(cut(plan, 'middle square').width.value).toBe(4.5);
    expect(cut(plan, 'square cut once').width.value).toBe(3.75);
    expect([cut(plan, 'square cut once').count, plan.yield]).toEqual([2, 1]);
  });

  it.each(SEAMS)('adds exactly s(2 + √2) to the middle ÷ √2 with a seam of %s', (_, scale, seam) => {
    const plan = made('square-in-square-triangles', squareInSquare(4 * Math.SQRT2), { ...scale, step: 1e-6 });
    expect(exactly(cut(plan, 'square cut once').width)).toBeCloseTo(4 / Math.SQRT2 + seam * HALF, 5);
  });

  // Stitch and flip (common practice): base finished + ½ both ways, corner squares half of it + ½.
  it('of 4 by stitch and flip comes from a 4½ square and four 2½ squares', () => {
    const plan = made('square-in-square-flip', squareInSquare(4));
    expect(cut(plan, 'large square').width.value).toBe(4.5);
    expect([cut(plan, 'corner square').width.value, cut(plan, 'corner square').count]).toEqual([2.5, 4]);
  });
});

describe('half-rectangle triangles', () => {
  // Computed: a triangle with a seam all round is the finished one made larger about its inscribed circle, whose radius is
  // twice the area over the way round; 2 × 4: r = 8 ÷ (6 + √20) = 0.763932, so × (r + ¼) ÷ r = 1.327254.
  it('of 2 × 4 are exactly 2.6545 × 5.309 before rounding, cut 2¾ × 5⅜', () => {
    const plan = made('half-rectangle', halfRectangle(2, 4));
    const [piece] = plan.cuts as readonly [Cut];
    expect(exactly(piece.width)).toBeCloseTo(2 * 1.3272542, 6);
    expect(exactly(piece.height)).toBeCloseTo(4 * 1.3272542, 6);
    expect(sizes(plan)).toEqual([
      [2.75, 5.375],
      [2.75, 5.375],
    ]);
    expect(plan.yield).toBe(2);
    expect(plain(plan.unfinished)).toEqual({ width: 2.5, height: 4.5 });
  });

  it('of a square are half-square triangles: finished and s(2 + √2)', () => {
    for (const [, scale, seam] of SEAMS) {
      const plan = made('half-rectangle', halfRectangle(3, 3), scale);
      expect(exactly(plan.cuts[0]?.width as Traced)).toBeCloseTo(3 + seam * HALF, 8);
    }
  });
});

describe('strip sets', () => {
  // Common practice, seam test: three 1½ strips sewn side by side measure 3½; n strips w wide: n(w − ½) + ½.
  it('of three 1½ strips measure 3½, sub-cut into rails of 3 finished', () => {
    const plan = made('rails-strips', rails(3, 3));
    expect(plan.cuts.map(({ width, height }) => [width.value, height.value])).toEqual([
      [1.5, 3.5],
      [1.5, 3.5],
      [1.5, 3.5],
    ]);
    expect(plain(plan.unfinished)).toEqual({ width: 3.5, height: 3.5 });
    expect(plan.stages[1]?.scene.height).toBeCloseTo(3.5, 9);
  });

  it.each([
    [2, 2.5],
    [3, 1.5],
    [4, 2],
    [5, 1.75],
    [7, 3],
  ])('of %s strips %s wide measure n(w − ½) + ½', (many, width) => {
    const roles = Array.from({ length: many }, (_, i) => (i % 2 === 0 ? 'a' : 'b'));
    const plan = made('rails-strips', rails(4, many * (width - 0.5), roles));
    expect(plan.cuts.every((piece) => piece.width.value === width)).toBe(true);
    expect(plan.unfinished.height.value).toBeCloseTo(many * (width - 0.5) + 0.5, 9);
  });

  // Common practice: nine-patches of 4½ finished from 2-inch strips; two sub-cuts of one set and one of the other, 2 wide.
  it('make nine-patches of 4½ finished from 2-inch strips, sub-cut every 2', () => {
    const plan = made('nine-patch-strips', ninePatch(4.5));
    expect(plan.cuts.map(({ width, height, count }) => [width.value, height.value, count])).toEqual([
      [2, 2, 2],
      [2, 2, 2],
      [2, 2, 2],
      [2, 2, 1],
      [2, 2, 1],
      [2, 2, 1],
    ]);
    expect(new Set(plan.cuts.map(({ stripSet }) => stripSet)).size).toBe(2);
    expect(plain(plan.unfinished)).toEqual({ width: 5, height: 5 });
  });

  it('make a checkerboard with an even number of squares one way from one set alone', () => {
    for (const [columns, rows, sets] of [
      [4, 4, 1],
      [4, 3, 1],
      [3, 4, 1],
      [3, 5, 2],
    ] as const) {
      const plan = made('checkerboard-strips', checkerboard(columns, rows, 1.5));
      expect(new Set(plan.cuts.map(({ stripSet }) => stripSet)).size).toBe(sets);
      expect(plain(plan.unfinished)).toEqual({ width: columns * 1.5 + 0.5, height: rows * 1.5 + 0.5 });
    }
  });

  // Computed: 1 1/16 finished and ½ is cut 1⅝ on eighths; three make 3 × 1⅝ − 2 × ½ = 3⅞, not 3 3/16 + ½ = 3 11/16.
  it('that no ruler has measure what their strips really make', () => {
    const plan = made('rails-strips', rails(3, 3), { grid: 1 + 1 / 16, ...QUARTER });
    expect(explain(plan.unfinished.height)).toBe('3⅞″ = 3 × 1⅝ cut − 2 × ½ for two seams');
  });
});

describe('templates', () => {
  // Computed: a quarter circle of radius 3 with a ¼ seam all round is the quarter of radius 3¼, a strip ¼ wide along each of
  // its straight sides, and the square of ¼ between them: π·3¼²/4 + 2 × ¼ × 3¼ + ¼² = 9.9834.
  it('of a quarter circle have a seam allowance all round', () => {
    const plan = made('quarter-circle', quarterCircle(4, 3));
    const [quarter] = plan.templates ?? [];
    const area = doubleArea(quarter?.cut ?? []) / 2;
    expect(area).toBeCloseTo(9.9834, 2);
    expect(quarter?.notches).toHaveLength(1);
  });

  it('are cut from rectangles that hold them, up to the ruler', () => {
    const plan = made('quarter-circle', quarterCircle(4, 3));
    expect(plan.cuts.map(({ width, height }) => [inchesText(width.value), inchesText(height.value)])).toEqual([
      ['3½″', '3½″'],
      ['4½″', '4½″'],
    ]);
  });
});
