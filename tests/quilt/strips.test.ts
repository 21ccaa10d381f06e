import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Pattern, Size } from '../../src/shared/pattern/schema.ts';
import { settingSchema } from '../../src/shared/pattern/settingSchema.ts';
import { pointsIn } from '../../src/shared/pressing/meet.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { testPattern } from '../helpers/fixtures.ts';
import { starter } from '../helpers/starters.ts';

const base = testPattern('brickwork');
const marks = (least: number, most: number) => fc.integer({ min: least * 8, max: most * 8 }).map((n) => n / 8);
const setting = fc
  .record(
    {
      kind: fc.constant('strips'),
      run: fc.constantFrom('rows', 'columns'),
      motif: fc.constantFrom(['A'], ['A B:90', 'B A'], ['A:m B A']),
      shift: fc.constantFrom('1/2', '1/3', '2/3'),
      fill: fc.constant('stone'),
      reflect: fc.constantFrom('across', 'down', 'both'),
      sashing: fc.record(
        {
          strips: fc.array(fc.record({ fabric: fc.constant('lamp'), width: marks(0.5, 3) }), {
            minLength: 1,
            maxLength: 3,
          }),
          outside: fc.boolean(),
        },
        { requiredKeys: ['strips'] },
      ),
    },
    { requiredKeys: ['kind', 'run', 'motif'] },
  )
  .map((one) => settingSchema.parse(one));
const size: fc.Arbitrary<Size> = fc.record({
  id: fc.constant('only'),
  name: fc.constant('Only'),
  across: fc.integer({ min: 1, max: 7 }),
  down: fc.integer({ min: 1, max: 7 }),
  block: fc.constantFrom(6, 9, 12),
  borders: fc.constant({}),
});

describe('any strips of blocks', () => {
  test('fit on the ruler’s marks, shifted or not, with sashing or without', () => {
    fc.assert(
      fc.property(setting, size, (own, only) => {
        const pattern: Pattern = { ...base, setting: own, sizes: [only] };
        const { findings, sizes } = workOut(pattern);
        expect(findings.filter(({ by }) => by !== undefined)).toEqual([]);
        const [one] = sizes;
        if (one === undefined) throw new Error(findings.map(({ what }) => what).join(' '));
        const inBlocks = one.blocks.reduce((sum, { id, count }) => {
          const pressing = workOut(pattern).blocks.find((block) => block.id === id)?.pressing;
          return sum + count * (pressing === undefined ? 0 : pointsIn(pressing));
        }, 0);
        expect(one.points).toBe(inBlocks + pointsIn(one.pressing));
      }),
      { numRuns: 80 },
    );
  });
});

describe('a row shifted by half a block', () => {
  const counted = (fill: boolean) => {
    const { fill: _fill, ...open } = base.setting as Extract<Pattern['setting'], { kind: 'strips' }>;
    const own = fill ? base.setting : open;
    const [cot] = workOut({ ...base, setting: own, sizes: base.sizes.slice(0, 1) }).sizes;
    return cot;
  };

  // Five rows of four: the second and the fourth are shifted.
  test('has one block fewer and two plain pieces of half a block', () => {
    const cot = counted(true);
    expect(cot?.quilt.blocks).toHaveLength(4 + 3 + 4 + 3 + 4);
    const fillers = cot?.quilt.patches.filter(({ use }) => use === 'filler') ?? [];
    expect(fillers.map(({ box, cut }) => [box.width, cut.width.value])).toEqual(Array(4).fill([4.5, 5]));
  });

  test('or one block more, of which two are cut off: a whole block is made for each', () => {
    const cot = counted(false);
    expect(cot?.quilt.blocks).toHaveLength(4 + 5 + 4 + 5 + 4);
    const cut = cot?.quilt.blocks.filter(({ part }) => part !== undefined) ?? [];
    expect(cut.map(({ part }) => part)).toEqual([
      { along: 'across', from: 0.5, to: 1 },
      { along: 'across', from: 0, to: 0.5 },
      { along: 'across', from: 0.5, to: 1 },
      { along: 'across', from: 0, to: 0.5 },
    ]);
    expect(cot?.blocks.reduce((sum, { count }) => sum + count, 0)).toBe(22);
  });

  // By hand: a four-patch of 12 has its seam at 6; cut a third in, at 4, it keeps 2 of the patch, more than a seam.
  test('a cut that leaves less of a patch than a seam allowance is told with its amount', () => {
    const { fill: _fill, ...open } = base.setting as Extract<Pattern['setting'], { kind: 'strips' }>;
    const cutAt = (block: number): Pattern => ({
      ...base,
      blocks: base.blocks.map((one) => ({ ...one, recipe: 'four-patch', fabrics: {} })),
      recipes: [starter('four-patch')],
      setting: { ...open, motif: ['A'], shift: '1/3' },
      sizes: base.sizes.slice(0, 1).map((one) => ({ ...one, block })),
      borders: [],
    });
    const told = (pattern: Pattern) =>
      workOut(pattern).findings.filter(({ where, what }) => where.path === 'setting.shift' && what.includes('Cut off'));
    expect(told(cutAt(12))).toEqual([]);
    // A four-patch of 1¼ has its seam at ⅝; cut a third in, at 0.417, it keeps 0.208 of the first patch.
    const [finding] = told(cutAt(1.25));
    expect(finding?.level).toBe('look');
    expect(finding?.what).toBe('Cut off at the edge, block A keeps only 0.208″ of a patch in Cot: less than a seam.');
  });

  test('a shift that is no part of a block is refused with its place', () => {
    expect(settingSchema.safeParse({ ...base.setting, shift: '3/2' }).success).toBe(false);
    expect(settingSchema.safeParse({ ...base.setting, shift: 'half' }).success).toBe(false);
  });
});
