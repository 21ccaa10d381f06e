import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clumps, spread, type Touching } from '../../src/shared/quilt/spread.ts';

/** A grid of places, each touching those beside it. */
function grid(across: number, down: number): Touching {
  return Array.from({ length: across * down }, (_, place) => {
    const [x, y] = [place % across, Math.floor(place / across)];
    const near = [
      [x - 1, y],
      [x + 1, y],
      [x, y - 1],
      [x, y + 1],
    ] as const;
    return near.filter(([a, b]) => a >= 0 && b >= 0 && a < across && b < down).map(([a, b]) => b * across + a);
  });
}

describe('scraps', () => {
  test('are spread with no two alike side by side, and about equally often', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 12 }),
        fc.integer({ min: 2, max: 12 }),
        fc.integer({ min: 4, max: 9 }),
        fc.nat(),
        (across, down, fabrics, seed) => {
          const places = grid(across, down);
          const given = spread(places, fabrics, seed);
          expect(clumps(places, given)).toBe(0);
          const often = Array.from({ length: fabrics }, (_, fabric) => given.filter((one) => one === fabric).length);
          const fair = (across * down) / fabrics;
          for (const n of often) expect(Math.abs(n - fair)).toBeLessThanOrEqual(Math.max(2, fair * 0.6));
        },
      ),
      { numRuns: 60 },
    );
  });

  test('are the same for the same seed, and others for another', () => {
    const places = grid(6, 8);
    expect(spread(places, 5, 7)).toEqual(spread(places, 5, 7));
    expect(spread(places, 5, 7)).not.toEqual(spread(places, 5, 8));
  });

  test('of two on a grid are a checkerboard at best: few clumps', () => {
    const places = grid(4, 4);
    expect(clumps(places, spread(places, 2, 1))).toBeLessThanOrEqual(8);
    expect(clumps(places, new Array(16).fill(0))).toBe(24);
  });
});
