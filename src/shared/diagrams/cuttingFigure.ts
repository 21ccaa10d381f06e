import type { Box } from '../drawing/turn.ts';
import { inchesText } from '../measure/fraction.ts';
import type { Inches } from '../measure/inches.ts';
import type { Units } from '../measure/metric.ts';
import type { Figure, Mark } from './figure.ts';
import { boxLine, boxOutline, framed, letter, line, middleOf, plainArea } from './marks.ts';
import { measuredLine } from './measured.ts';

/** A strip across the width and the pieces cut from it, left to right: what a cutting plan has. */
export interface StripToCut {
  readonly height: Inches;
  readonly times: number;
  readonly pieces: readonly {
    readonly letter: string;
    readonly width: Inches;
    readonly height: Inches;
    readonly count: number;
  }[];
}

/** No piece stands out. */
const NONE: ReadonlySet<string> = new Set();

/**
 * How one fabric is cut: the cloth's usable width, each kind of strip once with how often it is cut, its pieces by letter
 * to scale, what is left over bare.
 * @param width usable width of the cloth, inches
 * @param lit letters of pieces that stand out
 */
export function cuttingFigure(
  fabric: string,
  width: Inches,
  strips: readonly StripToCut[],
  lit: ReadonlySet<string> = NONE,
  units: Units = 'inches',
): Figure {
  const gap = width * 0.03;
  const marks: Mark[] = [
    ...measuredLine({ x: 0, y: 0 }, { x: width, y: 0 }, `${inchesText(width, units)} usable width`, gap),
  ];
  let y = gap * 1.4;
  for (const strip of strips) {
    marks.push(...stripMarks(fabric, width, strip, y, gap, lit, units));
    y += strip.height + gap;
  }
  const kinds = strips.length === 1 ? 'one kind of strip' : `${strips.length} kinds of strip`;
  return framed(marks, `How the cloth is cut: ${kinds} across ${inchesText(width, units)}.`, {
    top: gap,
    left: gap * 3.6,
    right: gap * 4.2,
  });
}

function stripMarks(
  fabric: string,
  width: Inches,
  strip: StripToCut,
  y: Inches,
  gap: Inches,
  lit: ReadonlySet<string>,
  units: Units,
): readonly Mark[] {
  const whole = { x: 0, y, width, height: strip.height };
  const marks: Mark[] = [plainArea([boxOutline(whole)], null, 'full', 'none')];
  let x = 0;
  for (const { letter: name, width: across, height: down, count } of strip.pieces) {
    const boxes = Array.from({ length: count }, (_, i) => ({ x: x + i * across, y, width: across, height: down }));
    const tone = lit.has(name) ? 'full' : 'pale';
    marks.push({ kind: 'area', outlines: boxes.map(boxOutline), fabric, tone, edge: 'none', of: pieceOf(name) });
    marks.push(...boxes.flatMap((box) => edgeCuts(box, strip.height)));
    marks.push(...namesOf(name, boxes, gap));
    x += count * across;
  }
  marks.push(boxLine(whole, 'cut'));
  marks.push(letter(inchesText(strip.height, units), { x: -gap * 0.4, y: y + strip.height / 2 }, 'measure', 'end'));
  marks.push(letter(`× ${strip.times}`, { x: width + gap * 0.4, y: y + strip.height / 2 }, 'measure', 'start'));
  return marks;
}

/** What a click on a piece means. */
export function pieceOf(letter: string): string {
  return `piece ${letter}`;
}

/** The letter of the piece a click meant; null beside all pieces. */
export function letterOf(of: string | null): string | null {
  return of?.startsWith('piece ') ? of.slice('piece '.length) : null;
}

type Piece = Box;

/** The cut at a piece's right side, through the whole strip, and below it where the strip is taller. */
function edgeCuts(box: Piece, height: Inches): readonly Mark[] {
  const right = box.x + box.width;
  const side = line({ x: right, y: box.y }, { x: right, y: box.y + height }, 'cut');
  const bottom = box.y + box.height;
  if (height - box.height < 1e-5) return [side];
  return [side, line({ x: box.x, y: bottom }, { x: right, y: bottom }, 'cut')];
}

/** A letter on every piece with room for it, else one in the middle of the run. */
export function namesOf(name: string, boxes: readonly Piece[], room: Inches): readonly Mark[] {
  const [first] = boxes;
  const last = boxes[boxes.length - 1];
  if (first === undefined || last === undefined) return [];
  if (first.width >= room * 1.8 && first.height >= room * 0.9) return boxes.map((box) => letter(name, middleOf(box)));
  const [a, b] = [middleOf(first), middleOf(last)];
  return [letter(name, { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 })];
}
