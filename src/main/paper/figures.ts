import { inchesText } from '../../shared/measure/fraction.ts';
import type { CaptionedFigure } from '../../shared/writing/book.ts';
import { Refused } from '../refusal.ts';
import { type Desk, setWords } from './desk.ts';
import { drawnFigure } from './drawnFigure.ts';
import { widthOf } from './engine/setText.ts';
import { arrange, type Cell, type Room } from './flow/arrange.ts';
import { bottomOf, type Content, movedContent } from './pieces/piece.ts';
import { POINTS_PER_INCH } from './sheet.ts';
import { TYPE } from './type.ts';
import { plainText } from './words.ts';

/** A row of figures with their captions. */
export interface FigureRow {
  readonly content: readonly Content[];
  readonly height: number;
}

const GAP = 20;
export const ROW_GAP = 16;
const CAPTION_GAP = 5;
/** A caption may be as wide as this beside a narrow figure. */
const CAPTION_WIDTH = 92;
/** The caption of a row's last figure may run on beside it. */
const LAST_CAPTION = 170;
/** Nothing is drawn larger than life. */
const LIFE_SIZE = POINTS_PER_INCH;

/** How figures are set. */
export interface Setting {
  readonly room: Room;
  /** In one scale; else all of one height. */
  readonly sameScale: boolean;
  /** Points for an inch of cloth, at the most. */
  readonly most?: number;
}

/**
 * Sets figures in as few rows as show them large, the bottoms of a row in line.
 * @throws Refused when a figure that must be its true size is larger than the page
 */
export function setFigures(desk: Desk, figures: readonly CaptionedFigure[], setting: Setting): FigureRow[] {
  const { rows, scale } = arranged(desk, figures, setting);
  let index = 0;
  return rows.map((row) => {
    const content = setRow(desk, row, scale, figures.slice(index, index + row.length), setting.room.width);
    index += row.length;
    return { content, height: bottomOf(content) };
  });
}

/** The scale figures would be set in, in points for an inch of cloth; null when none of them is free. */
export function scaleFor(desk: Desk, figures: readonly CaptionedFigure[], room: Room): number | null {
  const free = figures.some((one) => one.scale === undefined);
  return free ? arranged(desk, figures, { room, sameScale: true }).scale : null;
}

function arranged(desk: Desk, figures: readonly CaptionedFigure[], { room, sameScale, most = LIFE_SIZE }: Setting) {
  const cells = figures.map((one) => cellOf(desk, one, sameScale));
  return arrange(cells, room, { gap: GAP, rowGap: ROW_GAP }, sameScale ? most : room.each);
}

function cellOf(desk: Desk, one: CaptionedFigure, sameScale: boolean): Cell {
  const { figure, caption } = one;
  const words = caption === undefined ? 0 : widthOf(desk.document, plainText(caption), TYPE.caption);
  return {
    width: sameScale ? figure.width : figure.width / figure.height,
    height: sameScale ? figure.height : 1,
    least: Math.min(words, CAPTION_WIDTH),
    caption: words === 0 ? 0 : CAPTION_GAP + TYPE.caption.leading,
    exactly: exactScale(desk, one, sameScale),
  };
}

/** The scale a figure asks for, in points for a unit of its cell; only a true size is held when the page is too small. */
function exactScale(desk: Desk, { figure, scale }: CaptionedFigure, sameScale: boolean): number | null {
  if (scale === undefined) return null;
  const { frameWidth, frameHeight } = desk.sheet;
  const wanted = scale * POINTS_PER_INCH;
  const most = Math.min(frameWidth / figure.width, frameHeight / figure.height);
  if (scale === 1 && wanted > most) throw tooLarge(desk, figure);
  return Math.min(wanted, most) * (sameScale ? 1 : figure.height);
}

function tooLarge(desk: Desk, figure: CaptionedFigure['figure']): Refused {
  const [across, down] = [desk.sheet.frameWidth, desk.sheet.frameHeight].map((side) =>
    inchesText(Math.floor((side / POINTS_PER_INCH) * 8) / 8),
  );
  return new Refused(
    'bad-input',
    `“${figure.alt}” must be printed at its true size, ${inchesText(figure.width)} × ${inchesText(figure.height)}, and the page has room for ${across} × ${down}. Draw it in parts.`,
  );
}

function setRow(
  desk: Desk,
  row: readonly Cell[],
  scale: number,
  figures: readonly CaptionedFigure[],
  room: number,
): Content[] {
  const drawn = row.map((cell, i) => {
    const { figure } = figures[i] as CaptionedFigure;
    return drawnFigure(desk, figure, ((cell.exactly ?? scale) * cell.height) / figure.height);
  });
  const base = Math.max(...drawn.map((figure) => figure.height));
  let x = 0;
  return drawn.flatMap((figure, i) => {
    const { caption, figure: told } = figures[i] as CaptionedFigure;
    const left = x;
    const width = Math.max(figure.width, row[i]?.least ?? 0);
    x += width + GAP;
    const last = i === drawn.length - 1;
    const picture: Content = { tag: 'Figure', alt: told.alt, items: [{ ...figure, x: left, y: base - figure.height }] };
    if (caption === undefined) return [picture];
    const words = setWords(
      desk,
      caption,
      TYPE.caption,
      last ? Math.max(width, Math.min(LAST_CAPTION, room - left)) : width,
    );
    return [picture, movedContent({ tag: 'Caption', items: words.items }, left, base + CAPTION_GAP)];
  });
}
