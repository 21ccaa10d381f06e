import { distance } from '../../drawing/near.ts';
import type { Point } from '../../drawing/turn.ts';
import type { Inches } from '../../measure/inches.ts';
import { allowanceRound } from '../allowance/allowance.ts';
import type { FoundationArea } from './paper.ts';

/**
 * The rectangle of cloth for one area of a paper, generous on every side. One that is sewn on lies along its line, its near
 * edge a seam allowance beyond the line; the first lies along whichever side of its area takes the least cloth.
 */
export interface LaidPiece {
  /** Along the line, and away from it. */
  readonly width: Inches;
  readonly depth: Inches;
  /** Where the rectangle lies once it is opened: a corner, and the directions of its two sides. */
  readonly corner: Point;
  readonly along: Point;
  readonly away: Point;
}

/**
 * @param seam inches
 * @param spare what it is cut larger on every side that is trimmed later, inches
 */
export function laidPiece({ corners, seam: line }: FoundationArea, seam: Inches, spare: Inches): LaidPiece {
  const cut = allowanceRound(corners, seam, 'blunted');
  if (line !== null) return alongLine(cut, corners, line, seam, spare);
  const ways = corners.map((from, i) => {
    const to = corners[(i + 1) % corners.length] as Point;
    return box(cut, direction(from, to), spare);
  });
  return ways.reduce((least, way) => (way.width * way.depth < least.width * least.depth - 1e-9 ? way : least));
}

function alongLine(
  cut: readonly Point[],
  corners: readonly Point[],
  [from, to]: readonly [Point, Point],
  seam: Inches,
  spare: Inches,
): LaidPiece {
  const along = direction(from, to);
  const middle = corners.reduce((sum, { x, y }) => ({ x: sum.x + x, y: sum.y + y }), { x: 0, y: 0 });
  const right = { x: -along.y, y: along.x };
  const side = dot({ x: middle.x / corners.length - from.x, y: middle.y / corners.length - from.y }, right);
  const away = side >= 0 ? right : { x: -right.x, y: -right.y };
  const places = cut.map((point) => dot(point, along));
  const [first, last] = [Math.min(...places) - spare, Math.max(...places) + spare];
  const near = dot(from, away) - seam;
  const far = Math.max(...cut.map((point) => dot(point, away))) + spare;
  return { width: last - first, depth: far - near, corner: at(along, first, away, near), along, away };
}

function box(cut: readonly Point[], along: Point, spare: Inches): LaidPiece {
  const away = { x: -along.y, y: along.x };
  const [us, vs] = [cut.map((point) => dot(point, along)), cut.map((point) => dot(point, away))];
  const [u, v] = [Math.min(...us) - spare, Math.min(...vs) - spare];
  return {
    width: Math.max(...us) + spare - u,
    depth: Math.max(...vs) + spare - v,
    corner: at(along, u, away, v),
    along,
    away,
  };
}

function at(along: Point, u: Inches, away: Point, v: Inches): Point {
  return { x: along.x * u + away.x * v, y: along.y * u + away.y * v };
}

/** The four corners of a rectangle that lies like a piece, with a width and depth of its own, its middle kept along the line. */
export function cornersOfPiece(piece: LaidPiece, width: Inches, depth: Inches): readonly Point[] {
  const { corner, along, away } = piece;
  const start = (piece.width - width) / 2;
  const place = (u: Inches, v: Inches): Point => ({
    x: corner.x + along.x * u + away.x * v,
    y: corner.y + along.y * u + away.y * v,
  });
  return [place(start, 0), place(start + width, 0), place(start + width, depth), place(start, depth)];
}

function direction(from: Point, to: Point): Point {
  const length = distance(from, to);
  return { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
}

function dot(a: Point, b: Point): number {
  return a.x * b.x + a.y * b.y;
}
