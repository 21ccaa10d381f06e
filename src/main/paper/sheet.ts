import type { Paper } from '../../shared/contract.ts';

/** Points in an inch of paper. */
export const POINTS_PER_INCH = 72;

const GUTTER = 12;
const COLUMNS = 6;

/**
 * A page: its size and the frame the text stands in, in points. The wide left margin is where step numbers hang, and
 * where a punch may go.
 */
export interface Sheet {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly top: number;
  readonly frameWidth: number;
  readonly frameHeight: number;
  /** Baseline of the running foot, from the top of the page. */
  readonly foot: number;
}

/** US Letter (8½ × 11 in) and ISO 216 A4 (210 × 297 mm), each with a frame of six columns. */
const SHEETS: Readonly<Record<Paper, Sheet>> = {
  letter: { width: 612, height: 792, left: 84, top: 54, frameWidth: 480, frameHeight: 670, foot: 758 },
  a4: { width: 595.28, height: 841.89, left: 80, top: 58, frameWidth: 468, frameHeight: 714, foot: 806 },
};

/** The page for a kind of paper. */
export function sheetFor(paper: Paper): Sheet {
  return SHEETS[paper];
}

/** The width of so many of the six columns with the gutters between them. */
export function columns(sheet: Sheet, count: number): number {
  const one = (sheet.frameWidth - GUTTER * (COLUMNS - 1)) / COLUMNS;
  return one * count + GUTTER * (count - 1);
}

/** Where a column begins, from the frame's left edge; the first is 0. */
export function columnStart(sheet: Sheet, index: number): number {
  return index === 0 ? 0 : columns(sheet, index) + GUTTER;
}
