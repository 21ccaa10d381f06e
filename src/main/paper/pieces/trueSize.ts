import { type FigureSheet, inSheets } from '../../../shared/diagrams/inSheets.ts';
import type { Block, CaptionedFigure, Words } from '../../../shared/writing/book.ts';
import { type Desk, setWords } from '../desk.ts';
import { drawnFigure } from '../drawnFigure.ts';
import { LABELS } from '../labels.ts';
import { POINTS_PER_INCH } from '../sheet.ts';
import { TYPE } from '../type.ts';
import { bottomOf, type Content, movedContent, type Piece } from './piece.ts';
import { testSquare } from './testSquare.ts';
import { paragraph } from './text.ts';

type TrueSize = Extract<Block, { kind: 'true-size' }>;

/** Pages of templates use the paper further out than pages of words, points: every home printer reaches there. */
const MARGIN = 36;
const GAP = 24;
const CAPTION_GAP = 6;
/** A caption may be as wide as this beside a narrow figure. */
const CAPTION_WIDTH = 150;

/** One figure, or one sheet of a figure, with its caption, at its true size. */
interface Cell {
  readonly content: readonly Content[];
  readonly width: number;
  readonly height: number;
}

/**
 * Figures at their true size, in rows, in order. Every page of them begins with the square to be measured; what is larger
 * than a page is split over sheets that say which they are.
 * @param used what stands above them on their first page, points; null when they begin a page of their own
 */
export function trueSize(desk: Desk, { words, side, figures }: TrueSize, used: number | null): Piece[] {
  const opening = {
    ...paragraph(desk, words, 'body'),
    keepWithNext: true,
    ...(used === null ? { newPage: true } : {}),
  };
  const square = testSquare(desk, side);
  const { frameHeight } = desk.sheet;
  const room = {
    width: desk.sheet.width - 2 * MARGIN,
    height: frameHeight - square.height - GAP,
  };
  const pieces: Piece[] = [opening, { ...square, keepWithNext: true }];
  let left = frameHeight - (used ?? 0) - opening.before - opening.height - square.before - square.height;
  for (const row of rowsOf(desk, figures, room)) {
    const height = Math.max(...row.map((cell) => cell.height));
    if (height + GAP > left) {
      pieces.push({ ...square, newPage: true, keepWithNext: true });
      left = frameHeight - square.height;
    }
    left -= height + GAP;
    pieces.push(rowPiece(desk, row, height));
  }
  return pieces.map((piece, i) => (pieces[i + 1]?.newPage === true ? { ...piece, keepWithNext: false } : piece));
}

interface Room {
  readonly width: number;
  readonly height: number;
}

function rowsOf(desk: Desk, figures: readonly CaptionedFigure[], room: Room): readonly (readonly Cell[])[] {
  const rows: Cell[][] = [];
  let width = 0;
  for (const cell of figures.flatMap((figure) => cellsOf(desk, figure, room))) {
    const last = rows.at(-1);
    if (last !== undefined && width + GAP + cell.width <= room.width) {
      last.push(cell);
      width += GAP + cell.width;
    } else {
      rows.push([cell]);
      width = cell.width;
    }
  }
  return rows;
}

/** The figure whole, or the sheets it is split over. */
function cellsOf(desk: Desk, { figure, caption = [] }: CaptionedFigure, room: Room): readonly Cell[] {
  const tallest = setWords(desk, [...caption, sheetWords(9, 99)], TYPE.caption, CAPTION_WIDTH).height;
  const inches = {
    width: room.width / POINTS_PER_INCH,
    height: (room.height - CAPTION_GAP - tallest) / POINTS_PER_INCH,
  };
  const sheets = inSheets(figure, inches);
  return sheets.map((sheet, i) => {
    const words = sheets.length === 1 ? caption : [...caption, sheetWords(i + 1, sheets.length)];
    return cellOf(desk, sheet, words);
  });
}

function sheetWords(sheet: number, sheets: number): string {
  return ` ${LABELS.sheet(sheet, sheets)}`;
}

function cellOf(desk: Desk, { figure }: FigureSheet, caption: Words): Cell {
  const drawn = drawnFigure(desk, figure, POINTS_PER_INCH);
  const width = Math.max(drawn.width, CAPTION_WIDTH);
  const words = setWords(desk, caption, TYPE.caption, width);
  const below = movedContent({ tag: 'Caption', items: words.items }, 0, drawn.height + CAPTION_GAP);
  const content: Content[] = [{ tag: 'Figure', alt: figure.alt, items: [drawn] }, below];
  return { content, width, height: bottomOf(content) };
}

/** A row further out than the frame, its figures' tops in line. */
function rowPiece(desk: Desk, row: readonly Cell[], height: number): Piece {
  let x = MARGIN - desk.sheet.left;
  const content = row.flatMap((cell) => {
    const here = cell.content.map((part) => movedContent(part, x, 0));
    x += cell.width + GAP;
    return here;
  });
  return { height, before: GAP, content, decor: [] };
}
