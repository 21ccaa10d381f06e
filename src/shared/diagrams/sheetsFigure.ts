import type { Box, Point } from '../drawing/turn.ts';
import { inchesText } from '../measure/fraction.ts';
import type { Inches } from '../measure/inches.ts';
import type { Units } from '../measure/metric.ts';
import { namesOf, pieceOf, type StripToCut } from './cuttingFigure.ts';
import type { Figure, Mark } from './figure.ts';
import { boxLine, boxOutline, framed, letter, plainArea } from './marks.ts';

/** Sheets that are cut alike: strips across the sheet or, `lengthwise`, along its height. */
export interface SheetToCut {
  readonly times: number;
  readonly lengthwise: boolean;
  readonly strips: readonly StripToCut[];
}

export interface SheetSize {
  readonly width: Inches;
  readonly height: Inches;
}

/** As much cloth side by side as a strip across the usual width has, so that sheets and strips are seen at one scale. */
const ABREAST = 44;

/** How sheets of one fabric are cut: every different sheet once with how often it is cut, to scale, what is left over bare. */
export function sheetsFigure(
  fabric: string,
  sheet: SheetSize,
  plans: readonly SheetToCut[],
  lit: ReadonlySet<string> = new Set(),
  units: Units = 'inches',
): Figure {
  const gap = 2.4;
  const columns = Math.max(1, Math.floor((ABREAST + gap) / (sheet.width + gap)));
  const marks = plans.flatMap((plan, i) => {
    const at = { x: (i % columns) * (sheet.width + gap), y: Math.floor(i / columns) * (sheet.height + 2 * gap) };
    return sheetMarks(fabric, sheet, plan, at, lit, units);
  });
  const kinds = plans.length === 1 ? 'one kind of sheet' : `${plans.length} kinds of sheet`;
  const measure = `${inchesText(sheet.width, units)} by ${inchesText(sheet.height, units)}`;
  const rest = Math.max(0, ABREAST - columns * sheet.width - (columns - 1) * gap);
  return framed(marks, `How the sheets are cut: ${kinds}, ${measure}.`, { top: gap, right: rest });
}

function sheetMarks(
  fabric: string,
  sheet: SheetSize,
  { times, lengthwise, strips }: SheetToCut,
  at: Point,
  lit: ReadonlySet<string>,
  units: Units,
): readonly Mark[] {
  const whole = { ...at, ...sheet };
  const marks: Mark[] = [plainArea([boxOutline(whole)], null, 'full', 'none')];
  const place = (box: Box): Box =>
    lengthwise
      ? { x: at.x + box.y, y: at.y + box.x, width: box.height, height: box.width }
      : { ...box, x: at.x + box.x, y: at.y + box.y };
  let from = 0;
  for (const strip of strips) {
    for (let n = 0; n < strip.times; n++) {
      marks.push(...stripOfSheet(fabric, strip, from, place, lit));
      from += strip.height;
      const edge = lengthwise ? sheet.height : sheet.width;
      marks.push(boxLine(place({ x: 0, y: from - strip.height, width: edge, height: strip.height }), 'cut'));
    }
  }
  const words = `× ${times}   ${inchesText(sheet.width, units)} × ${inchesText(sheet.height, units)}`;
  return [
    ...marks,
    boxLine(whole, 'unit'),
    letter(words, { x: at.x, y: at.y + sheet.height + 1.2 }, 'measure', 'start'),
  ];
}

function stripOfSheet(
  fabric: string,
  strip: StripToCut,
  from: Inches,
  place: (box: Box) => Box,
  lit: ReadonlySet<string>,
): readonly Mark[] {
  let x = 0;
  return strip.pieces.flatMap(({ letter: name, width, height, count }) => {
    const boxes = Array.from({ length: count }, (_, i) => ({ x: x + i * width, y: from, width, height }));
    x += count * width;
    const tone = lit.has(name) ? 'full' : 'pale';
    const placed = boxes.map(place);
    return [
      { kind: 'area', outlines: placed.map(boxOutline), fabric, tone, edge: 'patch', of: pieceOf(name) },
      ...namesOf(name, placed, 1.2),
    ] satisfies Mark[];
  });
}
