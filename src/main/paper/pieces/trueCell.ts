import type { Figure } from '../../../shared/diagrams/figure.ts';
import { halfTurned } from '../../../shared/diagrams/halfTurned.ts';
import { boxAbout, sharedArea } from '../../../shared/drawing/boxes.ts';
import type { Box, Point } from '../../../shared/drawing/turn.ts';
import type { Words } from '../../../shared/writing/book.ts';
import { type Desk, setWords } from '../desk.ts';
import { drawnFigure } from '../drawnFigure.ts';
import { POINTS_PER_INCH } from '../sheet.ts';
import { TYPE } from '../type.ts';
import type { Way } from './nest.ts';
import { bottomOf, type Content, movedContent } from './piece.ts';

/** Between a figure and its caption, points. */
export const CAPTION_GAP = 6;
/** A caption is at least so wide, beside a narrow figure too. */
export const CAPTION_WIDTH = 150;

/** One figure at its true size with its caption, in one of the ways it can lie. */
export interface TrueCell extends Way {
  readonly content: readonly Content[];
}

/**
 * The ways a figure can lie: upright or upside down, its caption inside it, where nobody can take it for another's; if there is no
 * room, in a corner that the figure leaves free, or below it.
 */
export function trueCells(desk: Desk, figure: Figure, caption: Words): readonly TrueCell[] {
  const outline = cuttingLine(figure);
  if (outline === null) return [below(desk, figure, caption, boxOutline(figure))];
  const lies = [figure, halfTurned(figure)];
  return lies.flatMap((one) => {
    const own = cuttingLine(one) ?? boxOutline(one);
    const inside = placeInside(desk, one, caption, CAPTION_WIDTH) ?? placeInside(desk, one, caption, NARROW);
    if (inside !== null) return [cellOf(desk, one, caption, own, inside)];
    return [...inCorners(desk, one, caption, own), below(desk, one, caption, own)];
  });
}

/** The line a template is cut on, in points; null when the figure is none, or fills its box. */
function cuttingLine({ marks, width, height }: Figure): readonly Point[] | null {
  const line = marks.find((mark) => mark.kind === 'line' && mark.pen === 'unit');
  if (line?.kind !== 'line') return null;
  const [first, last] = [line.points[0], line.points.at(-1)];
  const closed = first !== undefined && last !== undefined && first.x === last.x && first.y === last.y;
  const box = boxAbout(line.points);
  if (!closed || box.width < 0.9 * width || box.height < 0.9 * height) return null;
  return marks.some(({ kind }) => kind === 'area') ? null : inPoints(line.points.slice(0, -1));
}

function inPoints(points: readonly Point[]): readonly Point[] {
  return points.map(({ x, y }) => ({ x: x * POINTS_PER_INCH, y: y * POINTS_PER_INCH }));
}

function boxOutline({ width, height }: Figure): readonly Point[] {
  return inPoints(corners({ x: 0, y: 0, width, height }));
}

function corners({ x, y, width, height }: Box): readonly Point[] {
  const [right, bottom] = [x + width, y + height];
  return [
    { x, y },
    { x: right, y },
    { x: right, y: bottom },
    { x, y: bottom },
  ];
}

function below(desk: Desk, figure: Figure, caption: Words, outline: readonly Point[]): TrueCell {
  const drawn = drawnFigure(desk, figure, POINTS_PER_INCH);
  const width = Math.max(drawn.width, CAPTION_WIDTH);
  return cellOf(desk, figure, caption, outline, { x: 0, y: drawn.height + CAPTION_GAP, width });
}

/** Inside a narrow figure a caption may be as narrow as this, points. */
const NARROW = 96;
/** Around what a caption keeps clear of inside a figure, points. */
const CLEAR = 8;

/** A place for the caption within the seam lines, beside the arrow and the name and as near to the name as can be. */
function placeInside(
  desk: Desk,
  figure: Figure,
  caption: Words,
  width: number,
): (Point & { readonly width: number }) | null {
  const seam = figure.marks.find((mark) => mark.kind === 'line' && mark.pen === 'sew');
  const name = figure.marks.find((mark) => mark.kind === 'letter');
  if (seam?.kind !== 'line' || name?.kind !== 'letter' || caption.length === 0) return null;
  const outline = inPoints(seam.points.slice(0, -1));
  const about = boxAbout(outline);
  const [heart] = inPoints([name.at]) as [Point];
  const taken = figure.marks.flatMap((mark) => {
    if (mark.kind === 'letter') return [grown(boxAbout(inPoints([mark.at])), 2 * CLEAR)];
    return mark.kind === 'arrow' ? [grown(boxAbout(inPoints([mark.from, mark.to])), CLEAR)] : [];
  });
  const { height } = setWords(desk, caption, TYPE.caption, width);
  const size = { width, height };
  let best: { readonly at: Point; readonly far: number } | null = null;
  for (let y = about.y; y + height <= about.y + about.height; y += CLEAR / 2) {
    for (let x = about.x; x + width <= about.x + about.width; x += CLEAR / 2) {
      const box = grown({ x, y, ...size }, CLEAR / 2);
      const far = Math.hypot(x + width / 2 - heart.x, y + height / 2 - heart.y);
      if ((best !== null && far >= best.far) || taken.some((one) => meet(one, box))) continue;
      if (sharedArea(outline, about, box) > box.width * box.height - 1) best = { at: { x, y }, far };
    }
  }
  return best === null ? null : { ...best.at, width };
}

function grown({ x, y, width, height }: Box, by: number): Box {
  return { x: x - by, y: y - by, width: width + 2 * by, height: height + 2 * by };
}

function meet(a: Box, b: Box): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

/** The caption in each corner of the figure's box where it keeps clear of the figure. */
function inCorners(desk: Desk, figure: Figure, caption: Words, outline: readonly Point[]): readonly TrueCell[] {
  const [wide, high] = [figure.width * POINTS_PER_INCH, figure.height * POINTS_PER_INCH];
  const { height } = setWords(desk, caption, TYPE.caption, CAPTION_WIDTH);
  const spots = [0, wide - CAPTION_WIDTH].flatMap((x) => [0, high - height].map((y) => ({ x, y })));
  return spots.flatMap(({ x, y }) => {
    const clear = {
      x: x - CAPTION_GAP,
      y: y - CAPTION_GAP,
      width: CAPTION_WIDTH + 2 * CAPTION_GAP,
      height: height + 2 * CAPTION_GAP,
    };
    const free = x >= 0 && y >= 0 && sharedArea(outline, boxAbout(outline), clear) === 0;
    return free ? [cellOf(desk, figure, caption, outline, { x, y, width: CAPTION_WIDTH })] : [];
  });
}

function cellOf(
  desk: Desk,
  figure: Figure,
  caption: Words,
  outline: readonly Point[],
  at: { readonly x: number; readonly y: number; readonly width: number },
): TrueCell {
  const drawn = drawnFigure(desk, figure, POINTS_PER_INCH);
  const words = setWords(desk, caption, TYPE.caption, at.width);
  const said = movedContent({ tag: 'Caption', items: words.items }, at.x, at.y);
  const content: Content[] = [{ tag: 'Figure', alt: figure.alt, items: [drawn] }, said];
  const written = corners({ ...at, height: words.height });
  return {
    content,
    width: Math.max(drawn.width, at.x + at.width),
    height: bottomOf(content),
    solids: caption.length === 0 ? [outline] : [outline, written],
  };
}
