import { same } from '../../measure/inches.ts';
import { minus, named, rounded, type Traced, type TracedSize } from '../../measure/traced.ts';
import type { Scale } from '../method.ts';
import type { Unit } from '../piecing.ts';
import { multiple, twoSeams, unfinishedLength } from './sums.ts';

/** Units of equal rectangles in columns and rows. */
export type Board = Extract<Unit, { kind: 'nine-patch' | 'checkerboard' | 'rails' }>;

/** How many rectangles stand across and down. */
function columnsOf(unit: Board): { readonly columns: number; readonly rows: number } {
  if (unit.kind === 'nine-patch') return { columns: 3, rows: 3 };
  if (unit.kind === 'rails') return { columns: 1, rows: unit.roles.length };
  return unit;
}

/** One of the rectangles as cut. */
export function boardPatch(unit: Board, scale: Scale): TracedSize {
  const { columns, rows } = columnsOf(unit);
  return { width: unfinishedLength(unit.width / columns, scale), height: unfinishedLength(unit.height / rows, scale) };
}

/** The unit as sewn from them: it is not trimmed, so what the ruler added to one patch is added as often as it is sewn. */
export function boardSize(unit: Board, scale: Scale): TracedSize {
  const { columns, rows } = columnsOf(unit);
  const patch = boardPatch(unit, scale);
  return {
    width: sewnLength(unit.width, columns, patch.width, scale),
    height: sewnLength(unit.height, rows, patch.height, scale),
  };
}

/**
 * So many equal pieces sewn side by side: n times one less two seams for each seam between them, n(w − 2s) + 2s (common
 * practice; three strips of 1½ make 3½).
 * @param units the finished length in grid units
 * @param piece one piece as cut
 */
export function sewnLength(units: number, pieces: number, piece: Traced, scale: Scale): Traced {
  const drawn = unfinishedLength(units, scale);
  if (pieces === 1) return drawn;
  const between = pieces === 2 ? twoSeams(scale) : multiple(pieces - 1, named(twoSeams(scale), 'for two seams'));
  const sewn = rounded(minus(multiple(pieces, named(piece, 'cut')), between), scale.step, 'near');
  return same(drawn.value, sewn.value) ? drawn : sewn;
}
