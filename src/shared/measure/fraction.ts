import { type Inches, same } from './inches.ts';
import { centimetresOf, metresOf, type Units } from './metric.ts';

/** The fractions that have a character of their own in the house fonts. */
const GLYPHS: Readonly<Record<string, string>> = {
  '1/2': '½',
  '1/4': '¼',
  '3/4': '¾',
  '1/8': '⅛',
  '3/8': '⅜',
  '5/8': '⅝',
  '7/8': '⅞',
};

const THIRDS: Readonly<Record<string, string>> = { '1/3': '⅓', '2/3': '⅔' };
const FRACTION_SLASH = '⁄';
const FINEST = 64;

/** A mixed number in lowest terms: `whole` plus `top`/`bottom`, with its sign. */
export interface Mixed {
  readonly negative: boolean;
  readonly whole: number;
  readonly top: number;
  readonly bottom: number;
}

/** The mixed number of a value that lies on a 1/64 mark, or null when it lies on none. */
export function mixedOf(value: number): Mixed | null {
  const size = Math.abs(value);
  const parts = Math.round(size * FINEST);
  if (!same(parts / FINEST, size)) return null;
  let top = parts % FINEST;
  let bottom = FINEST;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  return { negative: value < 0 && parts > 0, whole: Math.floor(parts / FINEST), top, bottom: top === 0 ? 1 : bottom };
}

function fractionText(top: number, bottom: number): string {
  if (top === 0) return '';
  return GLYPHS[`${top}/${bottom}`] ?? `${top}${FRACTION_SLASH}${bottom}`;
}

function decimalText(value: number): string {
  const sign = value < 0 ? '−' : '';
  const third = Math.abs(value) - Math.floor(Math.abs(value));
  for (const [name, glyph] of Object.entries(THIRDS)) {
    const [top = 0, bottom = 1] = name.split('/').map(Number);
    if (same(third, top / bottom)) return `${sign}${Math.floor(Math.abs(value)) || ''}${glyph}`;
  }
  return sign + String(Number(Math.abs(value).toFixed(3)));
}

/**
 * A number as a maker reads it: `1½`, `⅜`, `3 13⁄16`, `2.4` (no mark of a sixty-fourth), never `11/2`.
 * A fraction without a character of its own is set apart by a thin space so that `3 13⁄16` cannot read as `313⁄16`.
 */
export function fractionOf(value: number): string {
  const mixed = mixedOf(value);
  if (mixed === null) return decimalText(value);
  const { negative, whole, top, bottom } = mixed;
  const fraction = fractionText(top, bottom);
  const gap = whole > 0 && fraction.includes(FRACTION_SLASH) ? ' ' : '';
  const text = whole > 0 || fraction === '' ? `${whole}${gap}${fraction}` : fraction;
  return negative ? `−${text}` : text;
}

/** A length with its mark: `8½″`, or `21.5 cm`. */
export function inchesText(value: Inches, units: Units = 'inches'): string {
  return units === 'inches' ? `${fractionOf(value)}″` : `${centimetresOf(value)} cm`;
}

/** A rectangle as makers write it, width first: `2½″ × 4½″`, `6.5 × 11.5 cm`; one figure for a square is left to the caller. */
export function sizeText(width: Inches, height: Inches, units: Units = 'inches'): string {
  if (units === 'centimetres') return `${centimetresOf(width)} × ${centimetresOf(height)} cm`;
  return `${inchesText(width)} × ${inchesText(height)}`;
}

/** Cloth as a shop cuts it: `2⅝ yd`, or `2.4 m`. */
export function yardsText(yards: number, units: Units = 'inches'): string {
  return units === 'inches' ? `${fractionOf(yards)} yd` : `${metresOf(yards)} m`;
}
