import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { backingWays } from '../../src/shared/cloth/backing.ts';
import { biasStrips } from '../../src/shared/cloth/biasStrips.ts';
import { bindingNeed } from '../../src/shared/cloth/binding.ts';
import { cuttingPlan } from '../../src/shared/cloth/cuttingPlan.ts';
import { packagedFor } from '../../src/shared/cloth/packaged.ts';
import { count, given } from '../../src/shared/measure/traced.ts';
import {
  setBackingWay,
  setBindingCut,
  setBorderCut,
  setBundle,
  setFabricPrice,
} from '../../src/shared/pattern/edits/index.ts';
import type { Pattern } from '../../src/shared/pattern/schema.ts';
import { recipeSchema } from '../../src/shared/recipe/schema.ts';
import { cliffsIn, costIn, finishingIn, kitIn } from '../../src/shared/workroom/clothWays.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { testPattern } from '../helpers/fixtures.ts';
import { demoPattern } from '../helpers/starters.ts';
import { patternOf, quiltOf } from './quilts.ts';

function houseOf(usableWidth: number, squaring = 0): Pattern {
  const demo = demoPattern();
  const house = { ...demo.house, seam: 0.25, step: 0.125, yardStep: 0.125, usableWidth, squaring };
  return { ...demo, house, backing: { ...demo.backing, beyond: 4 }, binding: { ...demo.binding, strip: 2.5 } };
}

describe('batting by the package', () => {
  // Published list: 45×60, 72×90, 81×96, 90×108, 120×120.
  test.each([
    [30, 30, 45],
    [46, 52, 72],
    [57, 66, 72],
    [90, 72, 72],
    [96, 80, 81],
    [91, 109, 120],
  ])('%i by %i is cut from the one %i wide', (width, height, packed) => {
    const need = { width: given(width, ''), height: given(height, '') };
    expect(packagedFor(need)?.width).toBe(packed);
  });

  test('what is larger than every package is pieced', () => {
    expect(packagedFor({ width: given(121, ''), height: given(121, '') })).toBeNull();
  });
});

describe('backing', () => {
  // American Patchwork & Quilting, wall quilt pattern: 37½ × 43½ takes 2⅝ yd. Computed: from cloth 108 wide one length of 46.
  test('is compared both ways, and with wide cloth', () => {
    const ways = backingWays(quiltOf(37.5, 43.5), houseOf(40));
    const told = ways.map(({ cloth, run, panels, yards }) => [cloth, run, panels.value, yards.value]);
    expect(told).toEqual([
      ['usual', 'across', 2, 2.625],
      ['usual', 'down', 2, 3],
      ['wide', 'across', 1, 1.375],
      ['wide', 'down', 1, 1.5],
    ]);
  });

  // Computed: 112 across takes three panels of 40, joined by ¼-inch seams they reach 119.
  test('takes three panels where two are too narrow', () => {
    const ways = backingWays(quiltOf(104, 104), houseOf(40));
    expect(ways[0]).toMatchObject({ cloth: 'usual', panels: { value: 3 } });
  });
});

function boundAs(cut: 'bias' | 'continuous', width: number, height: number, usableWidth = 40) {
  const pattern = setBindingCut.apply(houseOf(usableWidth), { cut });
  return bindingNeed(quiltOf(width, height), pattern);
}

describe('binding on the bias', () => {
  // Computed: a continuous strip has the area of its square, so the side is the root of length × 2½; and an inch for seams.
  test('is one continuous strip from a square', () => {
    const straight = bindingNeed(quiltOf(50.5, 59.5), houseOf(40));
    const { from, length, strips } = boundAs('continuous', 50.5, 59.5);
    expect(straight.strips.value).toBe(6);
    expect(length.value).toBe(straight.length.value);
    const side = Math.sqrt(length.value * 2.5) + 1;
    expect(from?.height.value).toBe(Math.ceil(side));
    expect(from?.pieces.value).toBe(1);
    expect(strips.value).toBe(1);
  });

  test('takes several squares where one would be wider than the cloth', () => {
    const { from } = boundAs('continuous', 200, 220);
    expect(from?.pieces.value).toBeGreaterThan(1);
    expect(from?.height.value).toBeLessThanOrEqual(40);
  });

  // Computed: a square of 20 has diagonals of 28.28; strips of 2½ beside them are 25.78, 20.78, 15.78 and 10.78 along their middle.
  test('gives strips of these lengths from a square', () => {
    const lengths = biasStrips({ width: 20, height: 20 }, 2.5);
    expect(lengths.map((length) => Number(length.toFixed(2)))).toEqual([
      25.78, 25.78, 20.78, 20.78, 15.78, 15.78, 10.78, 10.78,
    ]);
  });

  // Computed: lines 2½ apart meet the long edge every 3.54 inches, so twenty inches beyond the square hold five full strips.
  test('gives full strips from cloth longer than it is wide', () => {
    const lengths = biasStrips({ width: 40, height: 60 }, 2.5);
    expect(lengths.filter((length) => Math.abs(length - 40 * Math.SQRT2) < 1e-9)).toHaveLength(5);
  });

  test('strips never take more than the cloth there is, and joined they reach round', () => {
    const inches = fc.integer({ min: 40, max: 480 }).map((quarters) => quarters / 4);
    fc.assert(
      fc.property(inches, inches, fc.constantFrom(1.5, 2, 2.25, 2.5, 3), (width, height, strip) => {
        const demo = houseOf(40);
        const pattern = { ...demo, binding: { ...demo.binding, strip, cut: 'bias' as const } };
        const { from, strips } = bindingNeed(quiltOf(width, height), pattern);
        if (from === undefined) throw new Error('no cloth for the strips');
        const cloth = { width: from.width.value, height: from.height.value };
        const used = [...biasStrips(cloth, strip)].slice(0, strips.value);
        const area = used.reduce((sum, length) => sum + length * strip, 0);
        expect(area).toBeLessThanOrEqual(cloth.width * cloth.height + 1e-6);
        const joined = used.reduce((sum, length) => sum + length, 0) - (used.length - 1) * 0.5 * Math.SQRT2;
        expect(joined).toBeGreaterThanOrEqual(2 * (width + height) + 10 - 1e-6);
      }),
    );
  });

  test('is in the cut list, the plan and the yards', () => {
    for (const cut of ['bias', 'continuous'] as const) {
      const worked = workOut(setBindingCut.apply(demoPattern(), { cut }));
      for (const { cloth } of worked.sizes) {
        const { fabric, from } = cloth.binding;
        const line = cloth.pieces.find(({ use }) => use.some(({ unit }) => unit === 'binding'));
        expect(line).toMatchObject({ cutAs: 'piece', count: { value: from?.pieces.value } });
        const need = cloth.needs.find((one) => one.fabric === fabric);
        const laid = need?.plan.strips.flatMap(({ pieces, times }) =>
          pieces.filter(({ letter }) => letter === line?.letter).map(({ count: many }) => many * times),
        );
        expect(laid?.reduce((sum, many) => sum + many, 0)).toBe(from?.pieces.value);
      }
    }
  });
});

describe('the way that is chosen', () => {
  test('of backing is what every size prints and buys', () => {
    for (const way of [{ run: 'down' }, { run: 'across' }, { run: 'down', wide: 108 }, { wide: 90 }] as const) {
      const worked = workOut(setBackingWay.apply(demoPattern(), way));
      for (const size of worked.sizes) {
        const { backing } = size.cloth;
        if ('run' in way) expect(backing.run).toBe(way.run);
        expect(backing.usableWidth.value).toBe('wide' in way ? way.wide : worked.pattern.house.usableWidth);
        const chosen = finishingIn(worked, size).backing.filter((one) => one.chosen);
        expect(chosen).toMatchObject([{ yards: { value: backing.yards.value } }]);
      }
    }
  });

  test('taken back is the way that takes least', () => {
    const demo = demoPattern();
    expect(setBackingWay.apply(setBackingWay.apply(demo, { run: 'down', wide: 100 }), {})).toEqual(demo);
    expect(setBindingCut.apply(setBindingCut.apply(demo, { cut: 'bias' }), { cut: 'straight' })).toEqual(demo);
  });
});

describe('long strips', () => {
  const border = {
    ...{ letter: 'N', fabric: 'sea', spare: 0, use: [], cutAs: 'long-strip' as const },
    ...{ width: given(60.5, ''), height: given(3.5, ''), count: count(2, 'strips') },
  };

  test('cut along the cloth are never joined, and stand across the strip', () => {
    const plan = cuttingPlan('sea', [{ ...border, lengthwise: true }], houseOf(40).house);
    expect(plan).toMatchObject({ stripCount: 1, length: { value: 60.5 }, proven: true });
    expect(plan.strips[0]?.pieces).toMatchObject([{ width: 3.5, height: 60.5, count: 2 }]);
  });

  test('a border that is to be cut along is so in the cut list', () => {
    const demo = demoPattern();
    const [border0] = demo.borders;
    if (border0 === undefined) throw new Error('the demo has no border');
    const pattern = setBorderCut.apply(demo, { border: border0.id, way: 'lengthwise' });
    for (const { cloth } of workOut(pattern).sizes) {
      const own = cloth.pieces.filter(({ use }) => use.some(({ unit }) => unit === border0.id));
      expect(own.map(({ lengthwise, joined }) => [lengthwise, joined])).toEqual(own.map(() => [true, undefined]));
    }
  });
});

// A published table takes 48 squares of 3½ from four strips of 42, with no slack at all; at 40 it takes five (computed).
test('where a narrower cloth tips over', () => {
  const recipe = recipeSchema.parse({
    ...{ format: 'piecewright-recipe', version: 1, id: 'square', name: 'Square', finished: 3 },
    roles: [{ id: 'sea', name: 'Sea', value: 'dark' }],
    body: { kind: 'grid', columns: [1], rows: [1], key: { S: { unit: 'plain', role: 'sea' } }, layout: ['S'] },
  });
  const base = patternOf(recipe);
  const size = { id: 'only', name: 'Only', across: 6, down: 8, block: 3, borders: {} };
  const [first = base.blocks[0]] = base.blocks;
  if (first === undefined) throw new Error('no block');
  const fabrics = base.fabrics.map(({ id }) => id);
  const pattern: Pattern = {
    ...{ ...base, borders: [], sizes: [size], recipes: [recipe] },
    blocks: [{ ...first, fabrics: { sea: fabrics[0] as string } }],
    setting: { kind: 'straight', motif: ['A'], single: [] },
    binding: { ...base.binding, fabric: fabrics[1] as string },
  };
  const worked = workOut(pattern);
  const [only] = worked.sizes;
  if (only === undefined) throw new Error('nothing worked out');
  const cliff = cliffsIn(worked, only).find(({ fabric }) => fabric === fabrics[0]);
  expect(cliff?.at.map(({ width, strips }) => [width, strips])).toEqual([
    [40, 5],
    [41, 5],
    [42, 4],
    [43, 4],
    [44, 4],
  ]);
  expect(cliff?.below).toEqual([42]);
});

describe('what it costs', () => {
  const plain = testPattern('six-lamps');
  const priced = plain.fabrics.reduce(
    (pattern, { id }) => setFabricPrice.apply(pattern, { fabric: id, price: 10 }),
    plain,
  );

  test('is not known without prices', () => {
    const worked = workOut(plain);
    const [size] = worked.sizes;
    expect(size === undefined ? undefined : costIn(worked, size)).toBeNull();
  });

  test('is yards, bundles and backing by their prices', () => {
    const worked = workOut(setBundle.apply(priced, { price: 45 }));
    const [size] = worked.sizes;
    if (size === undefined) throw new Error('no size');
    const cost = costIn(worked, size);
    const yards = size.cloth.needs.reduce((sum, need) => sum + need.yards.value, size.cloth.backing.yards.value);
    expect(cost?.total.value).toBeCloseTo(yards * 10 + 45, 6);
    expect(cost?.whole).toBe(true);
    expect(costIn(workOut(priced), size)?.whole).toBe(false);
    const kit = kitIn(worked, size, 12);
    expect(kit.costAll?.value).toBeCloseTo(12 * (yards * 10 + 45), 6);
    expect(kit.counted).toMatchObject([{ fabric: null, each: { value: 1 }, all: { value: 12 } }]);
    expect(kit.contents[0]).toMatchObject({ amount: { value: 1 }, what: 'bundle of strips' });
  });

  // Computed: twelve cuts of a length and 2 inches of squaring up once, in eighths of a yard.
  test('the bolt for many kits is squared up once', () => {
    const worked = workOut(plain);
    const [size] = worked.sizes;
    if (size === undefined) throw new Error('no size');
    for (const { each, bolt } of kitIn(worked, size, 12).cloth) {
      expect(bolt.value).toBeGreaterThanOrEqual(12 * each.value + 2 / 36);
      expect(bolt.value).toBeLessThan(12 * each.value + 2 / 36 + 0.125);
    }
  });
});

test('what finishes the demo is compared in every size', () => {
  const worked = workOut(demoPattern());
  for (const size of worked.sizes) {
    const { backing, borders } = finishingIn(worked, size);
    expect(backing[0]?.yards.value).toBe(size.cloth.backing.yards.value);
    for (const { ways } of borders) expect(ways.map(({ way }) => way)).toEqual(['straight', 'diagonal', 'lengthwise']);
  }
});
