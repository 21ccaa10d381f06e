import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { allot } from '../../src/shared/cloth/bundle/allot.ts';
import type { Supply } from '../../src/shared/cloth/bundle/allotment.ts';
import { instructionsOf } from '../../src/shared/cloth/bundle/instructions.ts';
import { fewestStrips } from '../../src/shared/cloth/bundle/recast.ts';
import type { LaidGroup } from '../../src/shared/cloth/bundle/squareLaid.ts';
import { isEnough, stress } from '../../src/shared/cloth/bundle/stress.ts';
import type { Group, Wants } from '../../src/shared/cloth/bundle/wants.ts';
import { setBundle } from '../../src/shared/pattern/edits/index.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { testPattern } from '../helpers/fixtures.ts';

/** So many groups of one piece each, every one in a block of its own. */
function pieces(many: number, length: number, across: number, first = 0): readonly Group[] {
  return Array.from({ length: many }, (_, i) => ({
    id: first + i,
    place: first + i,
    fabric: 'print',
    value: 'dark' as const,
    cuts: [{ letter: `P${length}x${across}`, length, across, count: 1 }],
    length,
  }));
}

const nothing = { long: [], outside: [], touching: [], neighbours: [] };
const wantsOf = (...groups: readonly (readonly Group[])[]): Wants => ({ groups: groups.flat(), ...nothing });
const tens = (dark: number): Supply => ({ length: 10, square: true, values: { light: 0, medium: 0, dark } });

/** All of them on the square, and none over another. */
function expectApart(boxes: readonly LaidGroup[], side: number): void {
  boxes.forEach((a, i) => {
    expect(Math.max(a.x + a.width, a.y + a.height)).toBeLessThanOrEqual(side + 1e-9);
    for (const b of boxes.slice(i + 1)) {
      const across = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
      const down = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y);
      expect(Math.min(across, down)).toBeLessThanOrEqual(1e-9);
    }
  });
}

describe('a bundle of ten-inch squares', () => {
  // By hand: a square of 10 is cut into 2 × 2 of 5, 4 × 4 of 2½, 3 × 3 of 3⅓ (3 of 3 and 1 left), or 2 × 4 of 5 by 2½.
  test.each([
    [5, 5, 4],
    [2.5, 2.5, 16],
    [3, 3, 9],
    [5, 2.5, 8],
    [10, 10, 1],
    [6, 6, 1],
  ])('gives pieces of %s × %s, %s from each', (length, across, each) => {
    const wants = wantsOf(pieces(3 * each, length, across));
    const allotment = allot(wants, tens(3));
    expect(isEnough(allotment)).toBe(true);
    expect(allotment.values).toMatchObject([{ forBlocks: 3, least: 3, spare: 0 }]);
    expect(isEnough(allot(wants, tens(2)))).toBe(false);
    expect(fewestStrips(wants, 10, true)).toEqual({ light: 0, medium: 0, dark: 3 });
  });

  test('fills what is left beside large pieces with small ones', () => {
    // By hand: beside a piece of 10 × 5 there is room for two of 5.
    const wants = wantsOf(pieces(4, 10, 5), pieces(8, 5, 5, 4));
    expect(allot(wants, tens(9)).values).toMatchObject([{ forBlocks: 4, least: 4 }]);
  });

  test('keeps a fabric from coming twice into a block, even if that takes more squares', () => {
    const twice = pieces(4, 5, 5).map((group) => ({ ...group, place: 0 }));
    const apart = allot({ groups: twice, ...nothing }, tens(4));
    expect([apart.clashes, apart.values[0]?.forBlocks]).toEqual([0, 4]);
    const tight = allot({ groups: twice, ...nothing }, tens(1));
    expect(tight.clashes).toBe(6);
  });

  test('says what cannot be cut from a square at all', () => {
    const allotment = allot(wantsOf(pieces(1, 10.5, 4)), tens(3));
    expect(allotment.short).toMatchObject([{ value: 'dark', square: true, tooLong: 10.5 }]);
  });

  test('cuts every piece once, and never more from a square than it is large', () => {
    const size = fc.integer({ min: 4, max: 40 }).map((n) => n / 4);
    const some = fc.array(fc.tuple(fc.nat(12), size, size), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(some, (lists) => {
        let first = 0;
        const groups = lists.flatMap(([many, length, across]) => {
          const own = pieces(many, length, across, first);
          first += many;
          return own;
        });
        const { strips, values } = allot({ groups, ...nothing }, tens(200));
        const cut = strips.flatMap((square) => square.groups.map(({ id }) => id));
        expect([...cut].sort((a, b) => a - b)).toEqual(groups.map(({ id }) => id));
        for (const square of strips) {
          const area = square.groups.reduce(
            (sum, { cuts }) => sum + (cuts[0]?.length ?? 0) * (cuts[0]?.across ?? 0),
            0,
          );
          expect(area).toBeLessThanOrEqual(100 + 1e-9);
          expectApart(square.laid ?? [], 10);
        }
        for (const { least, forBlocks } of values) expect(least).toBeLessThanOrEqual(forBlocks);
      }),
      { numRuns: 60 },
    );
  });
});

describe('a pattern made from squares', () => {
  const pattern = setBundle.apply(testPattern('six-lamps'), {
    strip: 10,
    length: 10,
    values: { light: 40, medium: 0, dark: 40 },
  });
  const [size] = workOut(pattern).sizes;
  if (size?.bundle === undefined) throw new Error('six-lamps has no bundle');
  const answer = size.bundle;

  // By hand: in each of six blocks ten dark squares of 2½ must match, and two such lots are twenty where sixteen lie on a
  // square of 10. Light: six of 2½ and four of 4½ × 2½ match and leave 17½ square inches of a square, too few for a strip of 8½ × 2½
  // (21¼), of which there are six; four of these lie on one square.
  test('takes as few squares as can be, and proves it', () => {
    expect(answer.allotment.values).toMatchObject([
      { value: 'light', forBlocks: 8, least: 8 },
      { value: 'dark', forBlocks: 6, least: 6 },
    ]);
  });

  test('has its borders and binding from yardage and its instructions in squares', () => {
    expect(answer.wants.long).toEqual([]);
    expect(answer.wants.outside.map(({ why }) => why)).toContain('too long');
    const instructions = instructionsOf(answer.allotment);
    for (const { words } of instructions) expect(words).toMatch(/^From (1|each of \d+) (light|dark) squares? cut /);
    expect(instructions.flatMap(({ strips }) => strips)).toHaveLength(answer.allotment.strips.length);
  });

  test('is tried with fewer, smaller and pinked squares', () => {
    const trials = stress(answer.wants, pattern.bundle as NonNullable<typeof pattern.bundle>);
    for (const { breaks } of trials) expect(breaks).not.toContain('strip');
  });
});
