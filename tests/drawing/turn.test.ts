import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ALL_TURNS, afterTurn, turnPoint, turnSize, UNTURNED, undoTurn } from '../../src/shared/drawing/turn.ts';

const turns = fc.constantFrom(...ALL_TURNS);
const sizes = fc.record({ width: fc.integer({ min: 1, max: 20 }), height: fc.integer({ min: 1, max: 20 }) });

test('turning and then turning again is one turn', () => {
  fc.assert(
    fc.property(turns, turns, sizes, (first, second, { width, height }) => {
      const point = { x: 0.3 * width, y: 0.8 * height };
      const between = turnSize(width, height, first);
      const twice = turnPoint(turnPoint(point, first, width, height), second, between.width, between.height);
      const once = turnPoint(point, afterTurn(first, second), width, height);
      expect(once.x).toBeCloseTo(twice.x, 9);
      expect(once.y).toBeCloseTo(twice.y, 9);
    }),
  );
});

test('a turn and its undoing leave things as they were', () => {
  for (const turn of ALL_TURNS) expect(afterTurn(turn, undoTurn(turn))).toEqual(UNTURNED);
});

test('four quarter turns are none', () => {
  const quarter = { quarters: 1, mirrored: false } as const;
  expect([1, 2, 3, 4].reduce((turn) => afterTurn(turn, quarter), UNTURNED)).toEqual(UNTURNED);
});
