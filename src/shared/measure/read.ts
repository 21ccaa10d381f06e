import { INCHES_PER_YARD, type Inches, MM_PER_INCH } from './inches.ts';
import type { Units } from './metric.ts';

const GLYPHS: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅓': '1/3',
  '⅔': '2/3',
};

/** Every way of writing the same thing made one: true fractions, thin spaces, the fraction slash. */
function plainly(text: string): string {
  return text
    .trim()
    .replace(/[½¼¾⅛⅜⅝⅞⅓⅔]/g, (glyph) => ` ${GLYPHS[glyph]}`)
    .replace(/⁄/g, '/')
    .replace(/,/g, '.')
    .replace(/[\s\u2009\u202f\u00a0]+/g, ' ')
    .replace(/ ?\/ ?/g, '/')
    .trim();
}

/**
 * A number as a maker types it: `8 1/2`, `8-1/2`, `8½`, `8.5`, `8,5`, `17/2`.
 * @returns the number, or null when the text is none of these; never less than zero
 */
export function readNumber(text: string): number | null {
  const match = /^(?:(\d+(?:\.\d*)?|\.\d+)|(?:(\d+)(?: |-))?(\d+)\/(\d+))$/.exec(plainly(text));
  if (match === null) return null;
  const [, decimal, whole = '0', top, bottom] = match;
  if (decimal !== undefined) return Number(decimal);
  if (Number(bottom) === 0) return null;
  return Number(whole) + Number(top) / Number(bottom);
}

/** What may stand behind a length, and how many millimetres one is. */
const WRITTEN: readonly (readonly [mark: RegExp, millimetres: number])[] = [
  [/(?:″|”|"|''|’’|′′|inch(?:es)?|in)\.?$/i, MM_PER_INCH],
  [/(?:mm|millimet(?:re|er)s?)\.?$/i, 1],
  [/(?:cm|centimet(?:re|er)s?)\.?$/i, 10],
  [/(?:yd|yards?)\.?$/i, INCHES_PER_YARD * MM_PER_INCH],
  [/(?:m|met(?:re|er)s?)\.?$/i, 1000],
];

const UNWRITTEN: Readonly<Record<Units, number>> = { inches: MM_PER_INCH, centimetres: 10 };

/**
 * A length as a maker types it. A unit written behind the number is what it is in (`2 1/2"`, `6.5 cm`, `65 mm`, `1.2 m`,
 * `1/4 yd`); without one it is in `units`.
 * @returns inches, or null when the text is no length
 */
export function readLength(text: string, units: Units): Inches | null {
  const typed = text.trim();
  const written = WRITTEN.find(([mark]) => mark.test(typed));
  const value = readNumber(written === undefined ? typed : typed.replace(written[0], ''));
  if (value === null) return null;
  const millimetres = written?.[1] ?? UNWRITTEN[units];
  return millimetres === MM_PER_INCH ? value : (value * millimetres) / MM_PER_INCH;
}
