import type { Point } from '../drawing/turn.ts';
import type { Press, PressingPlan } from '../pressing/pressing.ts';
import { fromFrame } from '../quilt/onPoint/frame.ts';
import type { DiagonalRow, OnPointLeaf } from '../quilt/quilt.ts';
import type { Scraps } from '../quilt/scraps.ts';
import { below } from './apart.ts';
import type { FigureBlock } from './blockCloth.ts';
import type { Arrow, Mark } from './figure.ts';
import { letter } from './marks.ts';
import { diagonalsApart, movedCloth } from './movedCloth.ts';

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
  // Rows are pulled apart along one diagonal only; beside them the corners need less room.
  const { moved, rows: spots } = diagonalsApart(leaf, gap, (far) => far / 3);
  const seamsOf = (at: string) => pressing?.parts.find((part) => part.path === at)?.seams ?? [];
  const blockRows = leaf.rows.flatMap((row, i) => (row.kind === 'blocks' ? [i] : []));
  return [
    ...movedCloth(moved, blocks, scraps),
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
