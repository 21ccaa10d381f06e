import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { allot } from '../../src/shared/cloth/bundle/allot.ts';
import type { Allotment, Supply } from '../../src/shared/cloth/bundle/allotment.ts';
import { instructionsOf } from '../../src/shared/cloth/bundle/instructions.ts';
import { fewestStrips } from '../../src/shared/cloth/bundle/recast.ts';
import { isEnough, stress, supplyOf } from '../../src/shared/cloth/bundle/stress.ts';
import type { Group, Wants } from '../../src/shared/cloth/bundle/wants.ts';
import { wantsIn } from '../../src/shared/workroom/bundles.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { testPattern } from '../helpers/fixtures.ts';

const worked = workOut(testPattern('six-lamps'));
const [size] = worked.sizes;
const { bundle } = worked.pattern;
if (size === undefined || bundle === undefined) throw new Error('six-lamps has no size or no bundle');
const found = wantsIn(worked, size);
if (found === null) throw new Error('no wants');
const wants = found;
const supply = supplyOf(bundle);

/** What must be true of every allotment, whatever it was asked. */
function expectSound(asked: Wants, given: Supply, { strips, short }: Allotment): void {
  const cut = strips.flatMap(({ groups }) => groups.map(({ id }) => id));
  const tooLong = asked.groups.filter(({ length }) => length > given.length);
  expect(cut.length + tooLong.length).toBe(asked.groups.length);
  expect(new Set(cut).size).toBe(cut.length);
  for (const { value, groups, long, left } of strips) {
    for (const group of groups) expect(group.value).toBe(value);
    const taken = [...groups, ...long].reduce((sum, { length }) => sum + length, 0);
    expect(taken + left).toBeCloseTo(given.length, 6);
    expect(left).toBeGreaterThanOrEqual(-1e-6);
  }
  if (short.length > 0) return;
  for (const value of ['light', 'medium', 'dark'] as const)
    expect(strips.filter((strip) => strip.value === value).length).toBeLessThanOrEqual(given.values[value]);
  for (const { letter, reach, join, strips: whole } of asked.long) {
    const parts = strips.flatMap(({ long }) => long.filter((one) => one.letter === letter));
    if (whole !== null) expect(parts).toHaveLength(whole);
    else {
      const joined = parts.reduce((sum, { length }) => sum + length, 0) - (parts.length - 1) * join;
      expect(joined).toBeGreaterThanOrEqual(reach - 1e-6);
    }
  }
}

function twiceInABlock({ strips }: Allotment): number {
  const met = strips.flatMap(({ fabric, groups }) => groups.map(({ place }) => `${fabric} ${place}`));
  return met.length - new Set(met).size;
}

function touchingItself(asked: Wants, { strips }: Allotment): number {
  const fabricOf = new Map(strips.flatMap(({ fabric, groups }) => groups.map(({ id }) => [id, fabric] as const)));
  return asked.touching.filter(([a, b]) => fabricOf.get(a) !== undefined && fabricOf.get(a) === fabricOf.get(b)).length;
}

describe('the bundle quilt of 41 by 57', () => {
  const allotment = allot(wants, supply);

  // Common practice: six such blocks set 2×3 and bordered finish about 41 × 57, from one bundle of forty 2½-inch strips, about
  // half of them light and half dark.
  test('one bundle of forty strips is enough, with strips to spare', () => {
    expect(isEnough(allotment)).toBe(true);
    expectSound(wants, supply, allotment);
    for (const { have, forBlocks, least, forLong, spare } of allotment.values) {
      expect(have).toBe(20);
      expect(forBlocks).toBe(least);
      expect(spare).toBe(have - forBlocks - forLong);
      expect(spare).toBeGreaterThan(0);
    }
  });

  test('no fabric comes twice into a block, and none touches itself across blocks as they are turned', () => {
    expect(wants.touching.length).toBeGreaterThan(0);
    expect(twiceInABlock(allotment)).toBe(0);
    expect(touchingItself(wants, allotment)).toBe(0);
  });

  // Computed: the star's background is four 2½ squares, four 4½ rectangles and two more squares: 33 inches of one strip.
  test('all the background of one star comes from one strip', () => {
    const stars = wants.groups.filter(({ fabric }) => fabric === 'sky');
    expect(stars.map(({ length }) => length)).toEqual(new Array(6).fill(33));
    expect(new Set(stars.map(({ place }) => place)).size).toBe(6);
  });

  // Computed: logs of one value and block are 46 and 54 inches; six blocks of them and of stars (33 and 25) are 474 inches of
  // each value, which is more than eleven strips of 42.
  test('the blocks take twelve strips of each value, and eleven cannot do', () => {
    for (const value of ['light', 'dark'] as const) {
      const length = wants.groups.filter((one) => one.value === value).reduce((sum, one) => sum + one.length, 0);
      expect(length).toBe(474);
    }
    expect(allotment.values.map(({ least }) => least)).toEqual([12, 12]);
  });

  test('is told in few instructions that give every strip once', () => {
    const instructions = instructionsOf(allotment);
    const numbers = instructions.flatMap(({ strips }) => strips);
    expect(new Set(numbers).size).toBe(numbers.length);
    expect(numbers).toHaveLength(allotment.strips.length);
    expect(instructions.length).toBeLessThanOrEqual(allotment.strips.length / 2);
    expect(instructions.map(({ words }) => words)).toContainEqual(
      expect.stringMatching(/^From each of 6 dark strips cut .*16½″/),
    );
  });

  test('what is borne holds, and one more breaks it, in one sentence', () => {
    const trials = stress(wants, bundle);
    const of = (what: string, value?: string) => trials.find((one) => one.what === what && one.value === value);
    for (const value of ['light', 'dark'] as const) {
      const trial = of('fewer', value);
      const left = (n: number) => ({ ...supply, values: { ...supply.values, [value]: 20 - n } });
      expect(isEnough(allot(wants, left(trial?.bears ?? 0)))).toBe(true);
      expect(isEnough(allot(wants, left((trial?.bears ?? 0) + 1)))).toBe(false);
    }
    const shorter = of('shorter')?.bears ?? 0;
    expect(isEnough(allot(wants, { ...supply, length: 42 - shorter }))).toBe(true);
    expect(isEnough(allot(wants, { ...supply, length: 42 - shorter - 0.25 }))).toBe(false);
    for (const { breaks } of trials) expect(breaks).toMatch(/^[A-Z][^.]*\.$/);
  });

  test('a bundle split 17 to 23 either way is still enough', () => {
    expect(isEnough(allot(wants, { ...supply, values: { light: 17, medium: 0, dark: 23 } }))).toBe(true);
    expect(isEnough(allot(wants, { ...supply, values: { light: 23, medium: 0, dark: 17 } }))).toBe(true);
  });

  test('the fewest strips that do are enough, and one fewer of either value is not', () => {
    const fewest = fewestStrips(wants, 42);
    if (fewest === null) throw new Error('no number does');
    expect(isEnough(allot(wants, { length: 42, values: fewest }))).toBe(true);
    for (const value of ['light', 'dark'] as const)
      expect(isEnough(allot(wants, { length: 42, values: { ...fewest, [value]: fewest[value] - 1 } }))).toBe(false);
    // A star's background takes 33 inches of one strip: from strips of 30 no number of them gives it.
    expect(fewestStrips(wants, 30)).toBeNull();
  });

  test('a bundle too small says what is missing', () => {
    const { short } = allot(wants, { length: 42, values: { light: 20, medium: 0, dark: 14 } });
    expect(short).toMatchObject([{ words: 'Binding', value: 'dark' }]);
    expect(short[0]?.strips).toBeGreaterThan(0);
  });
});

describe('any bundle', () => {
  const group = fc.record({
    place: fc.integer({ min: 0, max: 5 }),
    value: fc.constantFrom('light' as const, 'dark' as const),
    length: fc.integer({ min: 2, max: 60 }).map((n) => n / 2),
  });
  const some = fc.array(group, { maxLength: 30 }).map((groups): Wants => {
    const made = groups.map((one, id): Group => {
      const cut = { letter: 'A', length: one.length, across: 2.5, count: 1 };
      return { ...one, id, fabric: 'sea', cuts: [cut] };
    });
    const border = { letter: 'B', words: 'Binding', fabric: 'sea', value: 'dark', reach: 90, join: 2.5 } as const;
    return { groups: made, long: [{ ...border, strips: null }], outside: [], touching: [], neighbours: [[0, 1]] };
  });

  test('is cut within its strips, all pieces once, values kept, and reaches as far as is wanted', () => {
    fc.assert(
      fc.property(some, fc.nat(20), fc.nat(20), (asked, light, dark) => {
        const given = { length: 40, values: { light, medium: 0, dark } };
        const allotment = allot(asked, given);
        expectSound(asked, given, allotment);
        if (allotment.clashes === 0) expect(twiceInABlock(allotment)).toBe(0);
        if (Math.min(light, dark) >= asked.groups.length) expect(allotment.clashes).toBe(0);
        expect(allot(asked, given)).toEqual(allotment);
      }),
      { numRuns: 100 },
    );
  });
});
