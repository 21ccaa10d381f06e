import type { Figure } from '../../../shared/diagrams/figure.ts';
import type { CaptionedFigure, Words } from '../../../shared/writing/book.ts';
import { type Desk, setWords } from '../desk.ts';
import { drawnFigure } from '../drawnFigure.ts';
import { ROW_GAP, setFigures } from '../figures.ts';
import { columns } from '../sheet.ts';
import { TYPE } from '../type.ts';
import { movedContent, type Piece } from './piece.ts';

/** Points; two rows of large ones make a page, three when they are many. */
const TALLEST = { same: 150, own: 190, large: 290, many: 190 };
const MANY = 5;

/** Figures across the full width; a row is never parted. Large ones are worth reading one by one. */
export function figureRows(
  desk: Desk,
  figures: readonly CaptionedFigure[],
  sameScale: boolean,
  large = false,
): Piece[] {
  const room = {
    width: desk.sheet.frameWidth,
    height: Number.POSITIVE_INFINITY,
    each: sameScale ? TALLEST.same : large ? (figures.length < MANY ? TALLEST.large : TALLEST.many) : TALLEST.own,
  };
  return setFigures(desk, figures, { room, sameScale }).map(({ content, height }, index) => ({
    height,
    before: index === 0 ? 14 : ROW_GAP,
    content,
    decor: [],
  }));
}

/** The least share of a page that a figure with a page of its own can do with. */
const LEAST = 0.55;
const CAPTION_GAP = 8;

/** A figure as large as the rest of its page allows, and nothing after it there. */
export function wholePageFigure(desk: Desk, figure: Figure, caption: Words): Piece {
  const { sheet } = desk;
  const words = setWords(desk, caption, TYPE.caption, columns(sheet, 5));
  const place = (room: number): Piece => {
    const height = room - words.height - CAPTION_GAP;
    const drawn = drawnFigure(desk, figure, Math.min(sheet.frameWidth / figure.width, height / figure.height));
    const below = movedContent({ tag: 'Caption', items: words.items }, 0, drawn.height + CAPTION_GAP);
    return {
      height: drawn.height + CAPTION_GAP + words.height,
      before: 0,
      content: [{ tag: 'Figure', alt: figure.alt, items: [drawn] }, below],
      decor: [],
    };
  };
  return { height: sheet.frameHeight * LEAST, before: 8, content: [], decor: [], fill: place };
}
