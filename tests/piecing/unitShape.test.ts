import { describe, expect, it } from 'vitest';
import { doubleArea } from '../../src/shared/drawing/drawing.ts';
import type { Unit } from '../../src/shared/piecing/piecing.ts';
import { unitPolygons } from '../../src/shared/piecing/unitShape.ts';

const corner = (at: 'top-left' | 'top-right' | 'bottom-right' | 'bottom-left', size: number) => ({
  at,
  size,
  role: 'flip',
});

const UNITS: readonly Unit[] = [
  { kind: 'plain', key: 'p', width: 2, height: 3, role: 'a' },
  { kind: 'log', key: 'l', width: 5, height: 1, role: 'a' },
  { kind: 'hst', key: 'h', width: 2, height: 2, roles: ['a', 'b'] },
  { kind: 'geese', key: 'g', width: 4, height: 2, roles: ['a', 'b'] },
  { kind: 'four-patch', key: 'f', width: 4, height: 4, roles: ['a', 'b'] },
  {
    kind: 'corners',
    key: 'c1',
    width: 4,
    height: 4,
    role: 'a',
    corners: [corner('bottom-left', 1)],
  },
  {
    kind: 'corners',
    key: 'c2',
    width: 4,
    height: 2,
    role: 'a',
    corners: [corner('top-left', 2), corner('top-right', 2)],
  },
  {
    kind: 'corners',
    key: 'c4',
    width: 4,
    height: 4,
    role: 'a',
    corners: [corner('top-left', 2), corner('top-right', 2), corner('bottom-right', 2), corner('bottom-left', 2)],
  },
];

describe('the patches of a unit', () => {
  it.each(UNITS)('of kind $kind ($key) cover it once, each clockwise', (unit) => {
    const areas = unitPolygons(unit).map((polygon) => doubleArea(polygon.corners) / 2);
    expect(areas.every((area) => area > 0)).toBe(true);
    expect(areas.reduce((a, b) => a + b, 0)).toBe(unit.width * unit.height);
  });

  it('put the first role of a half-square triangle at the top left', () => {
    const [first] = unitPolygons(UNITS[2] as Unit);
    expect(first).toEqual({
      role: 'a',
      corners: [
        { x: 0, y: 0 },
        { x: 2, y: 0 },
        { x: 0, y: 2 },
      ],
    });
  });

  it('draw flying geese pointing up, and two touching corners as the same three triangles', () => {
    const shape = (unit: Unit) =>
      unitPolygons(unit).map(({ corners }) => [...corners].map(({ x, y }) => `${x},${y}`).sort());
    expect(shape(UNITS[3] as Unit)).toEqual(shape(UNITS[6] as Unit));
    expect(shape(UNITS[3] as Unit)[0]).toContain('2,0');
  });

  it('leave a square on its point between four corners that touch', () => {
    const [middle] = unitPolygons(UNITS[7] as Unit);
    expect(middle?.corners).toHaveLength(4);
  });
});
