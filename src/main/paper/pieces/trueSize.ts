import { inSheets } from '../../../shared/diagrams/inSheets.ts';
import type { Block, CaptionedFigure } from '../../../shared/writing/book.ts';
import { type Desk, setWords } from '../desk.ts';
import { LABELS } from '../labels.ts';
import { POINTS_PER_INCH } from '../sheet.ts';
import { TYPE } from '../type.ts';
import { nest, type Spot } from './nest.ts';
import { movedContent, type Piece } from './piece.ts';
import { testSquare } from './testSquare.ts';
import { paragraph } from './text.ts';
import { CAPTION_GAP, CAPTION_WIDTH, type TrueCell, trueCells } from './trueCell.ts';

type TrueSize = Extract<Block, { kind: 'true-size' }>;

/** Pages of templates use the paper further out than pages of words, points: every home printer reaches there. */
const MARGIN = 36;
const GAP = 24;
/** Between two figures: room for scissors. */
const APART = 14;

/**
 * Figures at their true size, nested on as few pages as will do. Every page of them begins with the square to be measured;
 * what is larger than a page is split over sheets that say which they are, and so is what would leave the words above them alone.
 * @param used what stands above them on their first page, points; null when they begin a page of their own
 */
export function trueSize(desk: Desk, { words, side, units, figures }: TrueSize, used: number | null): Piece[] {
  const opening = {
    ...paragraph(desk, words, 'body'),
    keepWithNext: true,
    ...(used === null ? { newPage: true } : {}),
  };
  const square = testSquare(desk, side, units);
  const { frameHeight, width, left } = desk.sheet;
  const later = frameHeight - square.height - GAP;
  const first = later - (used ?? 0) - opening.before - opening.height - square.before;
  const room = { width: width - 2 * MARGIN, first, later };
  const whole = laidOut(desk, figures, room, later);
  const { cells, spots } = whole.spots.some(({ page }) => page === 0) ? whole : laidOut(desk, figures, room, first);
  const pages = Math.max(...spots.map(({ page }) => page)) + 1;
  return Array.from({ length: pages }, (_, page) => {
    const content = spots
      .filter((spot) => spot.page === page)
      .sort((a, b) => a.y - b.y || a.x - b.x)
      .flatMap(({ thing, way, x, y }) => {
        const cell = cells[thing]?.[way] as TrueCell;
        return {
          bottom: y + cell.height,
          content: cell.content.map((part) => movedContent(part, MARGIN - left + x, y)),
        };
      });
    const height = Math.max(0, ...content.map(({ bottom }) => bottom));
    const shapes: Piece = { height, before: GAP, content: content.flatMap((one) => one.content), decor: [] };
    const head = page === 0 ? [opening, square] : [{ ...square, newPage: true }];
    return [...head.map((piece) => ({ ...piece, keepWithNext: true })), shapes];
  }).flat();
}

interface Room {
  readonly width: number;
  /** The height left for figures on the first page, and on every other. */
  readonly first: number;
  readonly later: number;
}

/** @param tallest no figure is printed higher than this in one piece, points */
function laidOut(
  desk: Desk,
  figures: readonly CaptionedFigure[],
  { width, first, later }: Room,
  tallest: number,
): { readonly cells: readonly (readonly TrueCell[])[]; readonly spots: readonly Spot[] } {
  const cells = figures.flatMap((figure) => cellsOf(desk, figure, { width, height: tallest }));
  const spots = nest(cells, { width, height: (page) => (page === 0 ? first : later), gap: APART });
  return { cells, spots };
}

/** The ways the figure can lie whole, or those of the sheets it is split over. */
function cellsOf(
  desk: Desk,
  { figure, caption = [] }: CaptionedFigure,
  room: { readonly width: number; readonly height: number },
): readonly (readonly TrueCell[])[] {
  const said = setWords(desk, [...caption, sheetWords(9, 99)], TYPE.caption, CAPTION_WIDTH).height;
  const inches = {
    width: room.width / POINTS_PER_INCH,
    height: (room.height - CAPTION_GAP - said) / POINTS_PER_INCH,
  };
  const sheets = inSheets(figure, inches);
  if (sheets.length === 1) return [trueCells(desk, figure, caption)];
  return sheets.map((sheet, i) => trueCells(desk, sheet.figure, [...caption, sheetWords(i + 1, sheets.length)]));
}

function sheetWords(sheet: number, sheets: number): string {
  return ` ${LABELS.sheet(sheet, sheets)}`;
}
