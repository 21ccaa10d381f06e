import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ALL_TURNS, afterTurn } from '../../src/shared/drawing/turn.ts';
import { lower } from '../../src/shared/piecing/lower.ts';
import { turnEdged } from '../../src/shared/pressing/ends.ts';
import { press } from '../../src/shared/pressing/press.ts';
import { unitEdges } from '../../src/shared/pressing/unitEdges.ts';
import { starter, starterBook } from '../helpers/starters.ts';

function pressed(id: string) {
  const result = lower(starter(id), {}, starterBook(), '');
  if (!result.ok) throw new Error(id);
  return press(result.value.root, unitEdges(result.value.units));
}

describe('pressing', () => {
  test('the rows of a nine-patch nest at all four of its inner corners', () => {
    const { plan } = pressed('nine-patch');
    expect(plan.nests).toBe(4);
    expect(plan.stacks).toBe(0);
  });

  // Common practice: log cabin seams are pressed away from the centre.
  test('every log of a log cabin is pressed away from the centre', () => {
    const { plan } = pressed('log-cabin');
    expect(plan.parts[0]?.seams.slice(0, 4)).toEqual(['up', 'right', 'down', 'left']);
  });

  test('a nine-patch turned a half meets the one above it with its seams the other way', () => {
    const { edged } = pressed('nine-patch');
    const half = turnEdged(edged, { quarters: 2, mirrored: false });
    expect(edged.ends.top[0]?.press).toBe('right');
    expect(half.ends.top[0]?.press).toBe('left');
    expect(half.ends.bottom[0]?.press).toBe('left');
  });

  test('turning twice is turning once by both', () => {
    const { edged } = pressed('double-four-patch');
    const turns = fc.constantFrom(...ALL_TURNS);
    fc.assert(
      fc.property(turns, turns, (first, second) => {
        expect(turnEdged(turnEdged(edged, first), second)).toEqual(turnEdged(edged, afterTurn(first, second)));
      }),
    );
  });
});
