import type { Box, Point } from '../drawing/turn.ts';
import type { Area, Arrow, Figure, Letter, Line, LinePen, Mark } from './figure.ts';

/** The roles of one recipe to the pattern's fabrics. */
export type FabricOf = Readonly<Record<string, string>>;

/** The four corners of a box, clockwise on screen. */
export function boxOutline({ x, y, width, height }: Box): readonly Point[] {
  return [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ];
}

/** The middle of a box. */
export function middleOf({ x, y, width, height }: Box): Point {
  return { x: x + width / 2, y: y + height / 2 };
}

/** The centre of gravity of a polygon: a spot inside every convex patch for its letter. */
export function heartOf(corners: readonly Point[]): Point {
  let [area, x, y] = [0, 0, 0];
  corners.forEach((a, i) => {
    const b = corners[(i + 1) % corners.length] as Point;
    const cross = a.x * b.y - b.x * a.y;
    area += cross;
    x += (a.x + b.x) * cross;
    y += (a.y + b.y) * cross;
  });
  return { x: x / (3 * area), y: y / (3 * area) };
}

export function boxLine(box: Box, pen: LinePen): Line {
  const outline = boxOutline(box);
  return { kind: 'line', pen, points: [...outline, outline[0] as Point] };
}

export function line(from: Point, to: Point, pen: LinePen): Line {
  return { kind: 'line', pen, points: [from, to] };
}

export function letter(
  text: string,
  at: Point,
  style: Letter['style'] = 'letter',
  align: Letter['align'] = 'middle',
): Letter {
  return { kind: 'letter', text, at, style, align };
}

export function plainArea(
  outlines: Area['outlines'],
  fabric: string | null,
  tone: Area['tone'],
  edge: Area['edge'],
): Area {
  return { kind: 'area', outlines, fabric, tone, edge };
}

function movedPoint(dx: number, dy: number): (point: Point) => Point {
  return ({ x, y }) => ({ x: x + dx, y: y + dy });
}

/** A mark somewhere else. */
export function moved<M extends Mark>(mark: M, dx: number, dy: number): M;
export function moved(mark: Mark, dx: number, dy: number): Mark {
  const move = movedPoint(dx, dy);
  switch (mark.kind) {
    case 'area':
      return { ...mark, outlines: mark.outlines.map((outline) => outline.map(move)) };
    case 'line':
      return { ...mark, points: mark.points.map(move) };
    case 'arrow':
      return { ...mark, from: move(mark.from), to: move(mark.to) };
    case 'letter':
      return { ...mark, at: move(mark.at) };
  }
}

/** Every run of points of a mark. */
function runsOf(mark: Mark): readonly (readonly Point[])[] {
  if (mark.kind === 'area') return mark.outlines;
  if (mark.kind === 'line') return [mark.points];
  return [mark.kind === 'arrow' ? [mark.from, mark.to] : [mark.at]];
}

/** The smallest box that holds points. */
export function boxAround(points: readonly Point[]): Box {
  return boxAroundAll([points]);
}

function boxAroundAll(runs: Iterable<readonly Point[]>): Box {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const run of runs) {
    for (const { x, y } of run) {
      left = Math.min(left, x);
      right = Math.max(right, x);
      top = Math.min(top, y);
      bottom = Math.max(bottom, y);
    }
  }
  return { x: left, y: top, width: right - left, height: bottom - top };
}

/** Room beside what is drawn, in inches of cloth. */
export interface Beside {
  readonly top?: number;
  readonly right?: number;
  readonly bottom?: number;
  readonly left?: number;
}

/** A figure just large enough for its marks, with room beside them. */
export function framed(marks: readonly Mark[], alt: string, beside: Beside = {}): Figure {
  const { top = 0, right = 0, bottom = 0, left = 0 } = beside;
  const box = boxAroundAll(marks.flatMap(runsOf));
  return {
    width: box.width + left + right,
    height: box.height + top + bottom,
    marks: marks.map((mark) => moved(mark, left - box.x, top - box.y)),
    alt,
  };
}

/** An arrow through a spot: `reach` to each side of it, pointing left, right, up or down. */
export function arrowAt(at: Point, way: 'left' | 'right' | 'up' | 'down', reach: number, means: Arrow['means']): Arrow {
  const dx = way === 'left' ? -reach : way === 'right' ? reach : 0;
  const dy = way === 'up' ? -reach : way === 'down' ? reach : 0;
  return { kind: 'arrow', means, from: { x: at.x - dx, y: at.y - dy }, to: { x: at.x + dx, y: at.y + dy } };
}
