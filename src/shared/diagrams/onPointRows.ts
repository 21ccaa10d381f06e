import type { Point } from '../drawing/turn.ts';
import type { Press, PressingPlan } from '../pressing/pressing.ts';
import { fromFrame } from '../quilt/onPoint/frame.ts';
import { partInQuilt } from '../quilt/onPoint/pieces.ts';
import type { DiagonalRow, OnPointLeaf, TopPiece } from '../quilt/quilt.ts';
import type { Scraps } from '../quilt/scraps.ts';
import { below } from './apart.ts';
import { areasOf, type FigureBlock } from './blockCloth.ts';
import type { Arrow, Mark } from './figure.ts';
import { letter } from './marks.ts';
import { gatherCloth, pieceLine } from './quiltCloth.ts';

const SHARE = Math.SQRT1_2;

/** A piece and how far it is drawn from where it is sewn. */
interface Apart {
  readonly piece: TopPiece;
  readonly by: Point;
}

/**
 * Diagonal rows pulled apart: each row of blocks has its number at its lower left end, an arrow for the way its seams are
 * pressed at the other, and the corners, which are sewn on last, stand outside.
 * @param path of the setting in the tree of the top
 * @param gap between two rows, inches
 */
export function onPointMarks(
  leaf: OnPointLeaf,
  path: string,
  gap: number,
  blocks: readonly FigureBlock[],
  pressing?: PressingPlan,
  scraps?: Scraps,
): readonly Mark[] {
  const middle = (leaf.rows.length - 1) / 2;
  const spots = leaf.rows.map((_, i): Point => ({ x: (i - middle) * gap * SHARE, y: (i - middle) * gap * SHARE }));
  const rows = leaf.rows.flatMap(({ parts }, i): readonly Apart[] =>
    parts.flatMap((part) => partInQuilt(part, leaf.origin)).map((piece) => ({ piece, by: spots[i] as Point })),
  );
  const pieces = [...rows, ...cornersApart(leaf, gap * (middle + 1))];
  const seamsOf = (at: string) => pressing?.parts.find((part) => part.path === at)?.seams ?? [];
  const blockRows = leaf.rows.flatMap((row, i) => (row.kind === 'blocks' ? [i] : []));
  return [
    ...clothMarks(pieces, blocks, scraps),
    ...leaf.rows.flatMap((row, i) => rowArrow(row, spots[i] as Point, leaf.origin, seamsOf(below(path, i)), gap)),
    ...blockRows.map((i, n) => {
      const row = leaf.rows[i] as DiagonalRow;
      const at = placed(
        { x: row.box.x - gap * 0.6, y: row.box.y + row.box.height / 2 },
        leaf.origin,
        spots[i] as Point,
      );
      return letter(String(n + 1), at, 'number');
    }),
  ];
}

/** Each corner stands out towards its own corner of the quilt. */
function cornersApart({ corners, origin }: OnPointLeaf, far: number): readonly Apart[] {
  const out: readonly Point[] = [
    { x: -1, y: -1 },
    { x: 1, y: -1 },
    { x: 1, y: 1 },
    { x: -1, y: 1 },
  ];
  return corners.flatMap((corner, i) => {
    const way = out[i] as Point;
    // Rows are pulled apart along one diagonal only; along the other the corners need a single gap.
    const distance = (i % 2 === 0 ? far : far / 3) * SHARE;
    const by = { x: way.x * distance, y: way.y * distance };
    return partInQuilt(corner, origin).map((piece) => ({ piece, by }));
  });
}

function clothMarks(pieces: readonly Apart[], blocks: readonly FigureBlock[], scraps?: Scraps): readonly Mark[] {
  const gathering = gatherCloth(blocks, scraps);
  for (const { piece, by } of pieces) gathering.add(piece, by);
  return [...areasOf(gathering.cloth, 'full', 'patch'), ...pieces.map(({ piece, by }) => pieceLine(piece, by))];
}

function placed(point: Point, origin: Point, by: Point): Point {
  const { x, y } = fromFrame(point, origin);
  return { x: x + by.x, y: y + by.y };
}

/** One arrow beyond the end of a row whose seams all go one way; else one on every seam. */
function rowArrow(
  { parts, box }: DiagonalRow,
  by: Point,
  origin: Point,
  seams: readonly Press[],
  gap: number,
): readonly Arrow[] {
  const [first] = seams;
  if (first === undefined) return [];
  const middle = box.y + box.height / 2;
  const arrow = (x: number, way: Press): Arrow => {
    const reach = (way === 'left' ? -1 : 1) * gap * 0.5;
    const from = placed({ x: x - reach, y: middle }, origin, by);
    return { kind: 'arrow', means: 'press', from, to: placed({ x: x + reach, y: middle }, origin, by) };
  };
  if (seams.every((way) => way === first)) return [arrow(box.x + box.width + gap, first)];
  return seams.map((way, i) => arrow((parts[i + 1] as DiagonalRow['parts'][number]).box.x, way));
}
