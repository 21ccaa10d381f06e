import type { Drawing } from '../drawing/drawing.ts';
import type { Point } from '../drawing/turn.ts';
import type { Unit } from './piecing.ts';
import { mapUnits } from './seamTree.ts';
import type { TradeShape } from './tradeUnit.ts';

type Keyless<U> = U extends Unit ? Omit<U, 'key'> : never;

/** A unit that has no name yet: its size is only known in whole grid units once the whole block is put together. */
export type Shape = Keyless<Unit>;

/** The shape made `factor` times as large. */
export function scaleShape(shape: Shape, factor: number): Shape {
  return mapLengths(shape, (length) => length * factor);
}

/** The shape with every length in it brought to the grid point it is a hair off. */
export function snapShape(shape: Shape): Shape {
  return mapLengths(shape, snap);
}

/** A length that arithmetic left a hair off a whole number of grid units; any other length stays as it is. */
export function snap(length: number): number {
  const whole = Math.round(length);
  return Math.abs(length - whole) < 1e-6 ? whole : length;
}

/** The one place that knows where the lengths of every kind of unit are. */
function mapLengths(shape: Shape, made: (length: number) => number): Shape {
  if (shape.kind !== 'pieced') return mapTrade(shape, made);
  const seams = mapUnits(shape.seams, (inside) => mapTrade(inside, made));
  return {
    ...shape,
    width: made(shape.width),
    height: made(shape.height),
    drawing: mapDrawing(shape.drawing, made),
    seams,
  };
}

function mapTrade(shape: TradeShape, made: (length: number) => number): TradeShape {
  const size = { width: made(shape.width), height: made(shape.height) };
  switch (shape.kind) {
    case 'corners':
      return { ...shape, ...size, corners: shape.corners.map((corner) => ({ ...corner, size: made(corner.size) })) };
    case 'quarter-circle':
      return { ...shape, ...size, radius: made(shape.radius) };
    default:
      return { ...shape, ...size };
  }
}

function mapDrawing(drawing: Drawing, made: (length: number) => number): Drawing {
  const point = ({ x, y }: Point): Point => ({ x: made(x), y: made(y) });
  const size = { width: made(drawing.width), height: made(drawing.height) };
  const moved = { ...drawing, ...size, points: drawing.points.map(point) };
  if (drawing.arcs === undefined) return moved;
  return { ...moved, arcs: drawing.arcs.map((arc) => ({ ...arc, centre: point(arc.centre) })) };
}
