/** A figure to be arranged: its size in units of its own, and what its caption needs in points. */
export interface Cell {
  readonly width: number;
  readonly height: number;
  /** The least width of its place, for the caption. */
  readonly least: number;
  /** Height of a one-line caption with the gap above it, or 0. */
  readonly caption: number;
  /** Points for a unit, when that is not free. */
  readonly exactly: number | null;
}

export interface Arranged {
  readonly rows: readonly (readonly Cell[])[];
  /** Points for a unit, for all whose scale is free. */
  readonly scale: number;
}

/** Where figures go, in points: no wider and no taller together, and no single one taller than `each`. */
export interface Room {
  readonly width: number;
  readonly height: number;
  readonly each: number;
}

interface Gaps {
  readonly gap: number;
  readonly rowGap: number;
}

const SHRINK = 0.96;
const LEAST_SCALE = 0.05;
/** More figures in a row win over a scale larger by less than this. */
const WORTH_A_ROW = 1.2;

/**
 * Puts figures in rows: the arrangement with the largest common scale, fewer rows when it makes little difference. Scales
 * that are given may make it taller than the room, never wider.
 */
export function arrange(cells: readonly Cell[], room: Room, gaps: Gaps, most: number): Arranged {
  let best: Arranged | null = null;
  for (let perRow = cells.length; perRow >= 1; perRow--) {
    const rows = chunks(cells, perRow);
    if (perRow > 1 && !rows.every((row) => rowWidth(row, LEAST_SCALE, gaps.gap) <= room.width)) continue;
    const scale = largestScale(rows, room, gaps, most);
    if (best === null || scale > best.scale * WORTH_A_ROW) best = { rows, scale };
  }
  return best ?? { rows: [], scale: 1 };
}

/** Rows as even as they can be: five in rows of three at most are three and two, four are two and two. */
function chunks(cells: readonly Cell[], perRow: number): Cell[][] {
  const rows = Math.ceil(cells.length / perRow);
  const even = Math.ceil(cells.length / rows);
  return Array.from({ length: rows }, (_, i) => cells.slice(i * even, (i + 1) * even)).filter((row) => row.length > 0);
}

function largestScale(rows: readonly (readonly Cell[])[], room: Room, gaps: Gaps, most: number): number {
  const tallest = Math.max(...rows.flat().map((cell) => cell.height));
  let scale = Math.min(most, room.each / tallest);
  while (scale > LEAST_SCALE && !fits(rows, scale, room, gaps)) scale *= SHRINK;
  return scale;
}

function fits(rows: readonly (readonly Cell[])[], scale: number, room: Room, gaps: Gaps): boolean {
  const height = rows.reduce((sum, row) => sum + rowHeight(row, scale), gaps.rowGap * (rows.length - 1));
  return height <= room.height && rows.every((row) => rowWidth(row, scale, gaps.gap) <= room.width);
}

function rowWidth(row: readonly Cell[], scale: number, gap: number): number {
  const widths = row.map((cell) => Math.max(cell.width * (cell.exactly ?? scale), cell.least));
  return widths.reduce((sum, width) => sum + width, gap * (row.length - 1));
}

function rowHeight(row: readonly Cell[], scale: number): number {
  const tallest = Math.max(...row.map((cell) => cell.height * (cell.exactly ?? scale)));
  return tallest + Math.max(...row.map((cell) => cell.caption));
}
