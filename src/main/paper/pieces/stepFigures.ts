import type { Step } from '../../../shared/writing/book.ts';
import type { Desk } from '../desk.ts';
import { type FigureRow, ROW_GAP, scaleFor, setFigures } from '../figures.ts';
import type { Room } from '../flow/arrange.ts';
import { columnStart, columns, POINTS_PER_INCH } from '../sheet.ts';
import { movedContent } from './piece.ts';

const MOST_BESIDE = 3;
const BESIDE = { height: 190, each: 112 };
const BELOW = { height: 400, each: 140 };
/** Figures of many patches are shown taller, points. */
const DETAILED = { patches: 48, each: 170 };
const BELOW_GAP = 10;
/** A page's rest lower than this shows no figure; they go to the next page. */
const LEAST_ROOM = 120;
/** Figures of one run of steps share a scale when theirs differ by no more than this; else small things are drawn larger. */
const NEAR = 2.2;
/** How much larger, then: 0 would be one scale for all, 1 all of one height. */
const LARGER = 0.75;

/** Where a step's figures go. */
export function stepFigures(desk: Desk, { figures }: Step): 'beside' | 'below' {
  const widest = columns(desk.sheet, 3);
  const exact = figures.map(({ figure, scale }) => (scale ?? 0) * figure.width * POINTS_PER_INCH);
  const few = figures.length > 0 && figures.length <= MOST_BESIDE;
  return few && exact.every((width) => width <= widest) ? 'beside' : 'below';
}

/**
 * The scale of each step's figures, points for an inch: the same for all when theirs are near each other. When they are
 * not, as when logs go round a small centre ten times, what grows on the quilt grows on paper too, but less.
 */
export function scalesOf(desk: Desk, steps: readonly Step[]): readonly (number | undefined)[] {
  const own = steps.map((step) =>
    scaleFor(desk, step.figures, stepFigures(desk, step) === 'beside' ? beside(desk, step) : below(desk, step)),
  );
  const smallest = Math.min(...own.map((scale) => scale ?? Number.POSITIVE_INFINITY));
  const near = own.every((scale) => scale === null || scale <= smallest * NEAR);
  const drawn = (scale: number) => (near ? smallest : smallest * (scale / smallest) ** LARGER);
  return own.map((scale) => (scale === null ? undefined : drawn(scale)));
}

/** A step's figures in the right half, level with its words. */
export function besideWords(desk: Desk, step: Step, most: number | undefined): FigureRow {
  return stacked(setFigures(desk, step.figures, setting(beside(desk, step), most)), columnStart(desk.sheet, 3), 2);
}

/** A step's figures across the full width under its words. */
export function belowWords(desk: Desk, step: Step, most: number | undefined, wordsHeight: number): FigureRow {
  if (step.figures.length === 0) return { content: [], height: 0 };
  const rest = desk.sheet.frameHeight - wordsHeight - BELOW_GAP;
  const height = rest < LEAST_ROOM ? BELOW.height : Math.min(BELOW.height, rest);
  return stacked(
    setFigures(desk, step.figures, setting({ ...below(desk, step), height }, most)),
    0,
    wordsHeight + BELOW_GAP,
  );
}

function beside(desk: Desk, step: Step): Room {
  return { width: columns(desk.sheet, 3), ...BESIDE, each: isDetailed(step) ? DETAILED.each : BESIDE.each };
}

function below(desk: Desk, step: Step): Room {
  return { width: desk.sheet.frameWidth, ...BELOW, each: isDetailed(step) ? DETAILED.each : BELOW.each };
}

function isDetailed({ figures }: Step): boolean {
  return figures.some(({ figure }) => {
    const patches = figure.marks.map((mark) => (mark.kind === 'area' ? mark.outlines.length : 0));
    return patches.reduce((sum, many) => sum + many, 0) > DETAILED.patches;
  });
}

function setting(room: Room, most: number | undefined) {
  return { room, sameScale: true, ...(most === undefined ? {} : { most }) };
}

function stacked(rows: readonly FigureRow[], x: number, top: number): FigureRow {
  let y = top;
  const content = rows.flatMap((row) => {
    const here = row.content.map((part) => movedContent(part, x, y));
    y += row.height + ROW_GAP;
    return here;
  });
  return { content, height: y - ROW_GAP };
}
