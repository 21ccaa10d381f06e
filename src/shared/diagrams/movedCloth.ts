import type { Point } from '../drawing/turn.ts';
import { partInQuilt, piecesOf } from '../quilt/onPoint/pieces.ts';
import type { OnPointLeaf, QuiltLeaf, TopPiece } from '../quilt/quilt.ts';
import type { Scraps } from '../quilt/scraps.ts';
import { areasOf, type FigureBlock } from './blockCloth.ts';
import type { Mark } from './figure.ts';
import { gatherCloth, pieceLine } from './quiltCloth.ts';

/** A piece of the top and how far it is drawn from where it is sewn. */
export interface Moved {
  readonly piece: TopPiece;
  readonly by: Point;
}

/** The pieces of a leaf, all moved alike. */
export function movedBy(leaf: QuiltLeaf, by: Point): readonly Moved[] {
  return piecesOf(leaf).map((piece) => ({ piece, by }));
}

/** Pieces drawn apart: their cloth where it now lies, and an outline about each. */
export function movedCloth(moved: readonly Moved[], blocks: readonly FigureBlock[], scraps?: Scraps): readonly Mark[] {
  const gathering = gatherCloth(blocks, scraps);
  for (const { piece, by } of moved) gathering.add(piece, by);
  return [...areasOf(gathering.cloth, 'full', 'patch'), ...moved.map(({ piece, by }) => pieceLine(piece, by))];
}

const SHARE = Math.SQRT1_2;

/** Diagonal rows drawn apart: every piece, where each row went, and how far the outermost corners are. */
export interface DiagonalsApart {
  readonly moved: readonly Moved[];
  readonly rows: readonly Point[];
  readonly far: number;
}

/**
 * Rows move away along the diagonal they follow one another by; the corners, sewn on last, each towards its own corner of the
 * quilt.
 * @param gap between two rows, inches
 * @param beside how far the two corners go that lie at the ends of the rows
 */
export function diagonalsApart(
  leaf: OnPointLeaf,
  gap: number,
  beside: (far: number) => number = () => gap,
): DiagonalsApart {
  const middle = (leaf.rows.length - 1) / 2;
  const along = (distance: number): Point => ({ x: distance * SHARE, y: distance * SHARE });
  const rows = leaf.rows.map((_, i) => along((i - middle) * gap));
  const far = (middle + 1) * gap;
  const near = beside(far) * SHARE;
  const corners: readonly Point[] = [along(-far), { x: near, y: -near }, along(far), { x: -near, y: near }];
  const inRows = leaf.rows.flatMap(({ parts }, i) =>
    parts.flatMap((part) => partInQuilt(part, leaf.origin)).map((piece): Moved => ({ piece, by: rows[i] as Point })),
  );
  const atCorners = leaf.corners.flatMap((corner, i) =>
    partInQuilt(corner, leaf.origin).map((piece): Moved => ({ piece, by: corners[i] as Point })),
  );
  return { moved: [...inRows, ...atCorners], rows, far: far * SHARE };
}
