import { INCHES_PER_YARD, type Inches, MM_PER_INCH, same } from './inches.ts';

/** What lengths are said in. They are kept in inches either way; a metric pattern is cut on the marks of a metric ruler. */
export type Units = 'inches' | 'centimetres';

/** Whether a ruler is metric: its marks are whole or half millimetres, and not also sixty-fourths of an inch. */
export function isMetric(step: Inches): boolean {
  const halves = step * MM_PER_INCH * 2;
  const fine = step * 64;
  return same(halves, Math.round(halves)) && !same(fine, Math.round(fine));
}

/** What lengths are said in where a pattern is cut with this ruler. */
export function unitsOn(step: Inches): Units {
  return isMetric(step) ? 'centimetres' : 'inches';
}

/** Inches in a centimetre; yards in a metre. */
export const CENTIMETRE: Inches = 10 / MM_PER_INCH;
export const METRE = 1000 / MM_PER_INCH / INCHES_PER_YARD;

/** A tenth of a metre, in yards: what a shop that sells by the metre cuts to (common practice). */
const SHOP_STEP = METRE / 10;

/** The part of a yard that yardage is rounded up to: the house’s, or a tenth of a metre where the ruler is metric. */
export function clothStep({ step, yardStep }: { readonly step: Inches; readonly yardStep: number }): number {
  return isMetric(step) ? SHOP_STEP : yardStep;
}

/** A length in centimetres as a maker reads it, to the twentieth of a millimetre: `21.5`, `0.75`. */
export function centimetresOf(value: Inches): string {
  return plain(value / CENTIMETRE);
}

/** Cloth in metres: `1.3`. */
export function metresOf(yards: number): string {
  return plain(yards / METRE);
}

function plain(value: number): string {
  const text = String(Number(Math.abs(value).toFixed(2)));
  return value < 0 && text !== '0' ? `−${text}` : text;
}
