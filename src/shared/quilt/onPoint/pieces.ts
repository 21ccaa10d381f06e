import type { Point } from '../../drawing/turn.ts';
import type { Part } from '../../piecing/piecing.ts';
import { leavesOf } from '../../piecing/tree.ts';
import { stripOutline } from '../mitre.ts';
import type { DiagonalLeaf, QuiltLeaf, TopPiece } from '../quilt.ts';
import { boxFromFrame, boxOf, cornersOf, fromFrame, ON_POINT_TILT, turnedAbout } from './frame.ts';

/** A leaf of a tree as the pieces of the top it is, where they lie in the quilt. */
export function piecesOf(leaf: QuiltLeaf): readonly TopPiece[] {
  if (leaf.kind !== 'on-point') return [leaf];
  const rows = leaf.rows.flatMap((row) => row.parts.flatMap((part) => partInQuilt(part, leaf.origin)));
  return [...rows, ...leaf.corners.map((corner) => inQuilt(corner, leaf.origin))];
}

/** What a part of a diagonal row is, where it lies in the quilt. @param origin of the frame the part lies in */
export function partInQuilt(part: Part<DiagonalLeaf>, origin: Point): readonly TopPiece[] {
  return leavesOf<DiagonalLeaf>(part).map((leaf) => inQuilt(leaf, origin));
}

function inQuilt(leaf: DiagonalLeaf, origin: Point): TopPiece {
  if (leaf.kind === 'block') return { ...leaf, box: boxFromFrame(leaf.box, origin), tilt: ON_POINT_TILT };
  const outline = (leaf.outline ?? cornersOf(leaf.box)).map((point) => fromFrame(point, origin));
  return { ...leaf, outline, box: boxOf(outline) };
}

/** The outline of a piece of the top, finished inches, clockwise on screen. */
export function outlineOf(piece: TopPiece): readonly Point[] {
  if (piece.kind === 'strip') return stripOutline(piece);
  if (piece.kind === 'block') return piece.tilt === undefined ? cornersOf(piece.box) : tilted(piece.box, piece.tilt);
  return piece.outline ?? cornersOf(piece.box);
}

function tilted(box: TopPiece['box'], degrees: number): readonly Point[] {
  const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  return cornersOf(box).map((corner) => turnedAbout(corner, middle, degrees));
}
