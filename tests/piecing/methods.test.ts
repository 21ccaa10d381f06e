import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { onRuler, same } from '../../src/shared/measure/inches.ts';
import { explain, type Traced } from '../../src/shared/measure/traced.ts';
import type { Method, Scale, Stage } from '../../src/shared/piecing/method.ts';
import { METHODS, methodNamed, methodsFor } from '../../src/shared/piecing/methods/index.ts';
import { exactly } from '../../src/shared/piecing/methods/sums.ts';
import type { Unit } from '../../src/shared/piecing/piecing.ts';
import { unitsOf } from '../../src/shared/piecing/seamTree.ts';
import { unitPolygons } from '../../src/shared/piecing/unitShape.ts';
import {
  checkerboard,
  corner,
  flipped,
  fourPatch,
  geese,
  halfRectangle,
  hst,
  ninePatch,
  QUARTER,
  qst,
  quarterCircle,
  rails,
  scales,
  square,
  squareInSquare,
  threePatch,
  units,
} from './someUnits.ts';

const INCH: Scale = { grid: 1, ...QUARTER };
const idsFor = (unit: Unit) => methodsFor(unit).map(({ id }) => id);
const method = (id: string) => methodNamed(id) as Method;
const textOf = (stage: Stage) => stage.words.map((word) => (typeof word === 'string' ? word : '#')).join('');

describe('the methods', () => {
  it('have each a name and a source of their own, and are found by their id', () => {
    expect(new Set(METHODS.map(({ id }) => id)).size).toBe(METHODS.length);
    for (const one of METHODS) {
      expect(one.name).not.toBe('');
      expect(one.source).not.toBe('');
      expect(methodNamed(one.id)).toBe(one);
    }
    expect(methodNamed('by-magic')).toBeNull();
  });

  it('offer for each unit the ways the trade knows, the best first', () => {
    expect(idsFor(square(2))).toEqual(['plain-cut']);
    expect(idsFor({ kind: 'log', key: 'l', width: 5, height: 1, role: 'a' })).toEqual(['log-cut']);
    expect(idsFor(hst(2))).toEqual(['hst-two', 'hst-eight', 'hst-oversize', 'hst-four', 'hst-triangles']);
    expect(idsFor(geese(2))).toEqual(['geese-four', 'geese-flip', 'geese-triangles', 'template', 'foundation']);
    expect(idsFor(fourPatch(4))).toEqual(['four-patch-strips', 'four-patch-squares']);
    expect(idsFor(flipped(4, 2, [corner('top-left', 1)]))).toEqual(['corners-flip', 'template', 'foundation']);
    expect(idsFor(qst(3))).toEqual(['qst-hst', 'qst-triangles', 'template', 'foundation']);
    expect(idsFor(qst(3, ['a', 'b', 'c', 'd']))).toEqual(['qst-triangles', 'template', 'foundation']);
    expect(idsFor(threePatch(3))).toEqual(['three-patch-triangles', 'template', 'foundation']);
    expect(idsFor(squareInSquare(4))).toEqual([
      'square-in-square-triangles',
      'square-in-square-flip',
      'template',
      'foundation',
    ]);
    expect(idsFor(halfRectangle(2, 4))).toEqual(['half-rectangle', 'template', 'foundation']);
    expect(idsFor(ninePatch(3))).toEqual(['nine-patch-strips', 'nine-patch-squares']);
    expect(idsFor(checkerboard(4, 4))).toEqual(['checkerboard-strips', 'checkerboard-squares']);
    expect(idsFor(rails(3, 3))).toEqual(['rails-strips', 'rails-pieces']);
    expect(idsFor(quarterCircle(3, 2))).toEqual(['quarter-circle']);
  });

  it('make half-square triangles only square, and flying geese only twice as wide as high', () => {
    const long: Unit = { kind: 'hst', key: 'h', width: 4, height: 2, roles: ['a', 'b'] };
    const steep: Unit = { kind: 'geese', key: 'g', width: 3, height: 2, roles: ['a', 'b'] };
    expect(idsFor(long)).toEqual([]);
    expect(idsFor(steep)).toEqual(['template', 'foundation']);
  });

  it('flip no corners that overlap, leave the rectangle, double up or hide it', () => {
    const bad = [
      flipped(4, 2, [corner('top-left', 2), corner('top-right', 2.5)]),
      flipped(4, 2, [corner('top-left', 3)]),
      flipped(4, 2, [corner('top-left', 1), corner('top-left', 2)]),
      flipped(4, 4, [corner('top-left', 4), corner('bottom-right', 4)]),
      flipped(4, 4, []),
    ];
    for (const unit of bad) expect(idsFor(unit)).not.toContain('corners-flip');
    const touching = flipped(
      4,
      4,
      ['top-left', 'top-right', 'bottom-right', 'bottom-left'].map((at) => corner(at as 'top-left', 2)),
    );
    expect(idsFor(touching)[0]).toBe('corners-flip');
  });

  it('refuse to plan a unit of another kind', () => {
    expect(() => method('hst-two').plan(square(2), INCH)).toThrow(TypeError);
  });
});

/** Every unit of every kind by each of its methods at any scale. */
function always(check: (unit: Unit, one: Method, scale: Scale) => void): void {
  const property = fc.property(units, scales, (unit, scale) => {
    for (const one of methodsFor(unit)) check(unit, one, scale);
  });
  fc.assert(property);
}

describe('whatever the unit, the seam and the ruler', () => {
  it('the patches cut are the patches sewn, batch by batch', () => {
    always((unit, one, scale) => {
      const plan = one.plan(unit, scale);
      const cut = plan.cuts.reduce((sum, { count, patches }) => sum + count * patches, 0);
      const before = (plan.takes ?? []).reduce((sum, taken) => sum + taken.count * unitPolygons(taken.unit).length, 0);
      expect(cut + plan.yield * before).toBe(plan.yield * unitPolygons(unit).length);
    });
  });

  it('the patches of each fabric are cut from that fabric', () => {
    always((unit, one, scale) => {
      const plan = one.plan(unit, scale);
      const roles = new Set(unitPolygons(unit).map(({ role }) => role));
      for (const role of roles) {
        const cut = plan.cuts.filter((piece) => piece.role === role);
        const sewn = (of: Unit) => unitPolygons(of).filter((patch) => patch.role === role).length;
        const before = (plan.takes ?? []).reduce((sum, taken) => sum + taken.count * sewn(taken.unit), 0);
        const own = cut.reduce((sum, { count, patches }) => sum + count * patches, 0);
        expect(own + plan.yield * before).toBe(plan.yield * sewn(unit));
      }
      expect(plan.cuts.every(({ role }) => roles.has(role))).toBe(true);
    });
  });

  it('every printed size lies on the ruler', () => {
    always((unit, one, scale) => {
      const plan = one.plan(unit, scale);
      const printed = [...plan.cuts, plan.unfinished].flatMap(({ width, height }) => [width, height]);
      for (const { value } of printed) expect(onRuler(value, scale.step)).toBe(true);
    });
  });

  it('the exact size can be found behind the printed one, within a step of it', () => {
    always((unit, one, scale) => {
      const { unfinished, cuts, trimmed } = one.plan(unit, scale);
      const lengths = [...cuts, unfinished].flatMap(({ width, height }) => [width, height]);
      for (const length of lengths) {
        // As many pieces as are sewn side by side are rounded each; a slope may take a few marks of the ruler more.
        const pieces = unit.kind === 'checkerboard' || unit.kind === 'rails' ? 5 : one.id === 'half-rectangle' ? 6 : 2;
        // The edge makes up for every unit inside that the ruler took half a mark from, and for half a mark of the whole.
        const inside = one.id === 'seam-by-seam' && unit.kind === 'pieced' ? (unitsOf(unit.seams).length + 1) / 2 : 0;
        const most = ((one.id === 'hst-eight' || trimmed ? pieces + 1 : pieces) + inside) * scale.step;
        expect(Math.abs(exactly(length) - length.value)).toBeLessThanOrEqual(most + 1e-9);
      }
    });
  });

  it('a trimmed unit is cut with enough to trim, and never too small', () => {
    always((unit, one, scale) => {
      const { unfinished, trimmed, cuts } = one.plan(unit, scale);
      if (!trimmed || unit.kind !== 'hst') return;
      const square = (cuts[0]?.width.value as number) / (one.id === 'hst-eight' ? 2 : 1);
      // An opened pair is shorter than its square by what the point of the seam allowance takes: s√2 (computed).
      expect(square - scale.seam * Math.SQRT2).toBeGreaterThan(unfinished.width.value - 1e-9);
    });
  });

  it('the sub-cuts of one strip set agree in height and number', () => {
    always((unit, one, scale) => {
      const sets = new Map<string, string>();
      for (const { stripSet, height, count } of one.plan(unit, scale).cuts) {
        if (stripSet === undefined) continue;
        const agreed = `${height.value} ${count}`;
        expect(sets.get(stripSet) ?? agreed).toBe(agreed);
        sets.set(stripSet, agreed);
      }
    });
  });

  it('the words are the same at every scale, and hold no typed number', () => {
    always((unit, one, scale) => {
      const here = one.plan(unit, scale).stages.map(textOf);
      expect(here).toEqual(one.plan(unit, INCH).stages.map(textOf));
      expect(here.every((text) => !/\d/.test(text) && text.endsWith('.'))).toBe(true);
    });
  });
});

describe('the numbers in the words', () => {
  it('are the seam, the cut sizes, the unit’s own size and that of the units in it', () => {
    always((unit, one, scale) => {
      const plan = one.plan(unit, scale);
      // Units that are taken in whole are told with the size that their own methods make them.
      const taken = (plan.takes ?? []).flatMap(({ unit: inner }) =>
        methodsFor(inner).map((way) => way.plan(inner, scale).unfinished),
      );
      const sizes = [...plan.cuts, plan.unfinished, ...taken].flatMap(({ width, height }) => [
        width.value,
        height.value,
      ]);
      const known = [scale.seam, ...sizes, ...sizes.map((size) => size / 2)];
      const said = plan.stages.flatMap(({ words }) => words.filter((word): word is Traced => typeof word !== 'string'));
      for (const { value, unit: counted } of said)
        if (counted === 'inch') expect(known.some((size) => same(size, value))).toBe(true);
    });
  });

  it('explain themselves as a quilter would', () => {
    const [large, small] = method('geese-four').plan(geese(2), INCH).cuts;
    const lengths = [
      method('plain-cut').plan(square(3), INCH).unfinished.width,
      method('hst-two').plan(hst(3), INCH).cuts[0]?.width,
      method('hst-eight').plan(hst(1.5), INCH).cuts[0]?.width,
      large?.width,
      small?.width,
    ];
    expect(lengths.map((length) => explain(length as Traced))).toEqual([
      '3½″ = 3 finished + 2 × ¼ seam',
      '3⅞″ = 3 finished + 0.854 for two seams and the diagonal, up to the next ⅛',
      '4¾″ = 2 × 2⅜ for two units',
      '5¼″ = 4 finished + 1.207 for two seams and two diagonals, up to the next ⅛',
      '2⅞″ = 2 finished + 0.854 for two seams and the diagonal, up to the next ⅛',
    ]);
  });
});

describe('sizes that no ruler has', () => {
  /** A 12-inch block on a five-grid: 2.4 inches to the unit. */
  const FIVE_GRID: Scale = { grid: 12 / 5, ...QUARTER };

  it('are sewn at the nearest mark, and cut large enough to trim', () => {
    const plan = method('hst-two').plan(hst(1), FIVE_GRID);
    expect(plan.unfinished.width.value).toBe(2.875);
    expect(plan.cuts[0]?.width.value).toBe(3.375);
    expect(explain(plan.unfinished.width)).toBe('2⅞″ = 2.4 finished + 2 × ¼ seam, to the nearest ⅛');
  });

  it('give a four-patch the size its patches really make', () => {
    // Computed: a patch of 1 1/16 finished and ½ is cut 1⅝ on eighths; two of them make 2 × 1⅝ − ½ = 2¾, not 2⅝.
    const plan = method('four-patch-squares').plan(fourPatch(2), { grid: 1 + 1 / 16, ...QUARTER });
    expect(plan.cuts[0]?.width.value).toBe(1.625);
    expect(plan.unfinished.width.value).toBe(2.75);
    expect(explain(plan.unfinished.width)).toBe('2¾″ = 2 × 1⅝ cut − 2 × ¼ seam');
  });
});

describe('light and dark', () => {
  const lit = (light: string): Scale => ({ ...INCH, roleValue: (role) => (role === light ? 'light' : 'dark') });

  it('decide which square is marked and which way a half-square triangle is pressed', () => {
    const said = method('hst-two').plan(hst(2), lit('a')).stages.map(textOf).join(' ');
    expect(said).toContain('the lighter square');
    expect(said).toContain('towards the darker fabric');
  });

  it('are not spoken of while nobody knows them', () => {
    for (const unit of [hst(2), fourPatch(4)]) {
      for (const one of methodsFor(unit)) {
        expect(one.plan(unit, INCH).stages.map(textOf).join(' ')).not.toMatch(/lighter|darker/);
      }
    }
  });

  it('change no size and no count', () => {
    always((unit, one, scale) => {
      const { stages: _, ...plan } = one.plan(unit, scale);
      const { stages: __, ...other } = one.plan(unit, { ...scale, roleValue: () => 'dark' });
      expect(other).toEqual(plan);
    });
  });
});
