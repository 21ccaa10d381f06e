import { describe, expect, test } from 'vitest';
import type { Act } from '../../../src/renderer/block/draw/acts.ts';
import { type Ground, type Pressed, press } from '../../../src/renderer/block/draw/hand.ts';
import { isOnEdge } from '../../../src/shared/drawing/meet.ts';
import { patchAt } from '../../../src/shared/drawing/split.ts';
import type { Point } from '../../../src/shared/drawing/turn.ts';
import { vertexAt } from '../../../src/shared/drawing/vertex.ts';
import { at, drawn, three } from './blocks.ts';

const drawing = drawn(4, three);
const ground: Ground = {
  isOnEdge: (place) => isOnEdge(drawing, place),
  isCorner: (place) => vertexAt(drawing, place) !== null,
  isSamePatch: (a, b) => patchAt(drawing, a) === patchAt(drawing, b),
};

/** What comes of places given one after another. */
function give(act: Act, ...places: readonly Point[]): Pressed {
  return places.reduce<Pressed>((so, place) => press(act, so.places, place, ground), { places: [] });
}

describe('the hand', () => {
  test('cuts from an edge to an edge, with bends inside a patch', () => {
    expect(give('cut', at(0, 3), at(2, 3)).deed).toBeUndefined();
    expect(give('cut', at(0, 3), at(2, 3), at(2, 4)).deed).toEqual({
      kind: 'cut',
      places: [at(0, 3), at(2, 3), at(2, 4)],
    });
  });

  test('says why a cut cannot start inside a patch, and begins none', () => {
    expect(give('cut', at(1, 3))).toEqual({ places: [], trouble: 'A cut starts on an edge or at a corner.' });
  });

  test('a place given twice is given once', () => {
    expect(give('cut', at(0, 3), at(0, 3)).places).toEqual([at(0, 3)]);
  });

  test('plants the compass anywhere, opens it to an edge and swings it to another', () => {
    expect(give('arc', at(4, 4), at(3, 4), at(4, 3)).deed).toEqual({
      kind: 'cut',
      places: [at(3, 4), at(4, 3)],
      centre: at(4, 4),
    });
    const opened = give('arc', at(1, 3), at(1.5, 3));
    expect(opened.trouble).toContain('to a place on an edge');
    expect(opened.places).toEqual([at(1, 3)]);
  });

  test('joins two patches, and lets go of one that is given twice', () => {
    expect(give('join', at(1, 1), at(3, 1)).deed).toEqual({ kind: 'join', places: [at(1, 1), at(3, 1)] });
    expect(give('join', at(1, 1), at(1.5, 1)).places).toEqual([]);
  });

  test('moves corners, and nothing else', () => {
    expect(give('move', at(2, 2), at(3, 2)).deed).toEqual({ kind: 'move', from: at(2, 2), to: at(3, 2) });
    expect(give('move', at(1, 1)).trouble).toBe('There is no corner here to move.');
  });

  test('says what has begun, with its place', () => {
    expect(give('cut', at(0, 2.5)).said).toBe('The cut begins at 0 across, 2½ down.');
    expect(give('arc', at(4, 4)).said).toBe('The compass stands at 4 across, 4 down.');
  });
});
