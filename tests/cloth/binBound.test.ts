import fc from 'fast-check';
import { expect, test } from 'vitest';
import { binBound } from '../../src/shared/cloth/strips/binBound.ts';

/** The fewest stocks, by trying every way to put the lengths in one after another. */
function fewest(lengths: readonly number[], stock: number, rooms: readonly number[] = []): number {
  const [length, ...rest] = lengths;
  if (length === undefined) return rooms.length;
  let best = fewest(rest, stock, [...rooms, stock - length]);
  rooms.forEach((room, index) => {
    if (room < length) return;
    const filled = rooms.map((one, i) => (i === index ? room - length : one));
    best = Math.min(best, fewest(rest, stock, filled));
  });
  return best;
}

test('the bound on stocks never passes the fewest there can be', () => {
  const lengths = fc.array(fc.integer({ min: 1, max: 30 }), { minLength: 1, maxLength: 7 });
  fc.assert(
    fc.property(lengths, (some) => {
      const bound = binBound(
        some.map((length) => ({ length, count: 1 })),
        30,
      );
      expect(bound).toBeLessThanOrEqual(fewest(some, 30));
    }),
    { numRuns: 300 },
  );
});

// Computed: lengths over half the stock never share one; thirds go three to a stock.
test('the bound knows halves and thirds', () => {
  expect(binBound([{ length: 21, count: 7 }], 40)).toBe(7);
  expect(binBound([{ length: 12, count: 10 }], 40)).toBe(4);
  expect(
    binBound(
      [
        { length: 21, count: 3 },
        { length: 20, count: 3 },
      ],
      40,
    ),
  ).toBe(5);
  expect(binBound([], 40)).toBe(0);
});
