import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planStrips } from '../../src/shared/cloth/strips/planStrips.ts';
import { leastLength } from './leastLength.ts';
import { anyLength, CLOTH, eighths, expectSound, kinds } from './sound.ts';

describe('a plan of strips', () => {
  test('cuts what was asked for, nothing beyond the cloth, and is never under its bound', () => {
    fc.assert(
      fc.property(fc.array(kinds(eighths, 60), { maxLength: 7 }), (asked) => {
        expectSound(asked, planStrips(asked, CLOTH));
      }),
      { numRuns: 150 },
    );
  });

  test('is as sound when sizes lie on no ruler', () => {
    fc.assert(
      fc.property(fc.array(kinds(anyLength, 20), { maxLength: 5 }), (asked) => {
        expectSound(asked, planStrips(asked, CLOTH));
      }),
      { numRuns: 60 },
    );
  });

  test('has the true least length between its bound and itself', () => {
    const single = (length: typeof eighths) => fc.array(kinds(length, 1), { minLength: 1, maxLength: 7 });
    fc.assert(
      fc.property(fc.oneof(single(eighths), single(anyLength)), (asked) => {
        const plan = planStrips(asked, CLOTH);
        const least = leastLength(asked, CLOTH);
        expect(plan.bound).toBeLessThanOrEqual(least + 1e-5);
        expect(plan.length).toBeGreaterThanOrEqual(least - 1e-5);
      }),
      { numRuns: 300 },
    );
  });

  test('is the same plan every time', () => {
    fc.assert(
      fc.property(fc.array(kinds(eighths, 30), { maxLength: 5 }), (asked) => {
        expect(planStrips(asked, CLOTH)).toEqual(planStrips(asked, CLOTH));
      }),
      { numRuns: 20 },
    );
  });

  // Computed: 40 pieces 4½ × 21 lie one to a 4½ strip (180 inches) or, turned, eight to a 21 strip (105 inches).
  test('turns pieces when that saves cloth, and only if they may be turned', () => {
    const long = { width: 21, height: 4.5, count: 40 };
    expect(planStrips([{ ...long, turns: true }], CLOTH)).toMatchObject({ length: 105, bound: 105, proven: true });
    expect(planStrips([{ ...long, turns: false }], CLOTH)).toMatchObject({ length: 180, bound: 180, proven: true });
  });

  // Computed: eight squares of 4½ (36 inches) leave 4 inches of width, room for two 2-inch squares in each of five strips.
  test('trims lower pieces from what is left of taller strips', () => {
    const plan = planStrips(
      [
        { width: 4.5, height: 4.5, count: 40, turns: true },
        { width: 2, height: 2, count: 10, turns: true },
      ],
      CLOTH,
    );
    expect(plan).toMatchObject({ length: 22.5, proven: true });
    expect(plan.strips).toHaveLength(1);
  });

  test('of nothing is no strips', () => {
    expect(planStrips([], CLOTH)).toEqual({ strips: [], length: 0, bound: 0, proven: true });
    const none = { width: 3, height: 3, count: 0, turns: true };
    expect(planStrips([none], CLOTH)).toEqual({ strips: [], length: 0, bound: 0, proven: true });
  });

  test('of a hundred thousand equal pieces is one kind of strip and its remainder', () => {
    const plan = planStrips([{ width: 2.5, height: 2.5, count: 100_000, turns: true }], CLOTH);
    expect(plan).toMatchObject({ length: 15_625, proven: true });
    expect(plan.strips).toHaveLength(1);
  });

  test('of thousands of different pieces is still a sound plan', () => {
    const many = Array.from({ length: 2000 }, (_, i) => ({
      width: 1 + (i % 190) / 8,
      height: 1 + (i % 97) / 8,
      count: 1 + (i % 5),
      turns: i % 2 === 0,
    }));
    expectSound(many, planStrips(many, CLOTH));
  });

  test('refuses a piece that is wider than the cloth however it lies', () => {
    expect(() => planStrips([{ width: 50, height: 41, count: 1, turns: true }], CLOTH)).toThrow(RangeError);
  });
});
