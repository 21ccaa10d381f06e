import fc from 'fast-check';
import { expect, test } from 'vitest';
import { heldIn, WHOLE, zoomedAt } from '../../../src/renderer/parts/stage/useZoom.ts';

const place = fc.record({ x: fc.integer({ min: -400, max: 400 }), y: fc.integer({ min: -300, max: 300 }) });

/** Where a point of the figure, from its middle, is seen. */
function seen(sight: { zoom: number; x: number; y: number }, x: number): number {
  return sight.x + sight.zoom * x;
}

test('what lies under the hand stays there while it zooms', () => {
  fc.assert(
    fc.property(place, fc.double({ min: 1.05, max: 2, noNaN: true }), (at, by) => {
      const first = zoomedAt(WHOLE, by, at);
      const second = zoomedAt(first, by, at);
      expect(seen(first, at.x)).toBeCloseTo(at.x, 6);
      expect(seen(second, at.x)).toBeCloseTo(at.x, 6);
    }),
  );
});

test('it goes no further out than the whole, and the figure never leaves its room', () => {
  expect(zoomedAt({ zoom: 1.2, x: 50, y: 9 }, 0.1, { x: 3, y: 4 })).toEqual(WHOLE);
  const room = { width: 800, height: 600 };
  expect(heldIn({ zoom: 2, x: 5000, y: -5000 }, room)).toEqual({ zoom: 2, x: 800, y: -600 });
});
