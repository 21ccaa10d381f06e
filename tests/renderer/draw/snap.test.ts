import { describe, expect, test } from 'vitest';
import { marksFrom, marksOf, marksOnCircle, snapTo } from '../../../src/renderer/block/draw/snap.ts';
import { at, drawn, three } from './blocks.ts';

const drawing = drawn(4, three);
const whole = marksOf(drawing, { finer: 1, stars: false });
const near = (marks: typeof whole, x: number, y: number) => snapTo(at(x, y), marks, 0.3);

describe('places the hand is drawn to', () => {
  test('corners, grid points, edges on grid lines and middles of edges, each told apart', () => {
    expect(near(whole, 2.1, 1.9)).toMatchObject({ place: at(2, 2), kind: 'corner' });
    expect(near(whole, 1.1, 0.9)).toMatchObject({ place: at(1, 1), kind: 'grid', onEdge: false });
    expect(near(whole, 1.1, 2.1)).toMatchObject({ place: at(1, 2), kind: 'line', onEdge: true });
    expect(near(marksOf(drawn(3, []), { finer: 1, stars: false }), 1.45, 0.05)).toMatchObject({ kind: 'middle' });
  });

  test('a corner draws the hand from farther than a grid point', () => {
    const cut = drawn(4, [{ inside: [1, 1], from: [0.5, 0], to: [0.5, 4], role: 'star' }]);
    expect(snapTo(at(0.78, 0.02), marksOf(cut, { finer: 1, stars: false }), 0.4)?.place).toEqual(at(0.5, 0));
  });

  test('a finer grid has its own points', () => {
    expect(near(marksOf(drawing, { finer: 2, stars: false }), 1.55, 0.45)).toMatchObject({ place: at(1.5, 0.5) });
  });

  test('out of reach of every mark the nearest is meant', () => {
    expect(snapTo(at(1.4, 0.6), whole, 0.1)?.place).toEqual(at(1, 1));
  });

  // An eight-point star divides each side of its square as 1 : √2 : 1 (common geometry).
  test('the marks of an eight-point star divide each side as 1 : √2 : 1', () => {
    const stars = marksOf(drawn(10, []), { finer: 1, stars: true }).filter(({ kind }) => kind === 'star');
    expect(stars).toHaveLength(8);
    const along = stars.filter(({ place }) => place.y === 0).map(({ place }) => place.x);
    const [first = 0, second = 0] = along;
    expect((second - first) / first).toBeCloseTo(Math.SQRT2, 9);
    expect(10 - second).toBeCloseTo(first, 9);
  });
});

describe('marks of what has begun', () => {
  test('a cut is drawn straight, at 45°, and square to edges', () => {
    const marks = marksFrom(drawing, at(0, 3));
    const slants = marks
      .filter(({ kind }) => kind === 'slant')
      .map(({ place }) => `${place.x.toFixed(3)} ${place.y.toFixed(3)}`);
    expect(slants).toEqual(expect.arrayContaining(['4.000 3.000', '1.000 4.000', '1.000 2.000']));
    expect(marks.some(({ place }) => place.x === 0 && place.y === 3)).toBe(false);
  });

  test('a compass is drawn to where its circle meets edges', () => {
    const marks = marksOnCircle(drawing, at(4, 4), at(3, 4));
    expect(marks.map(({ place }) => [place.x.toFixed(3), place.y.toFixed(3)])).toEqual([['4.000', '3.000']]);
  });
});
