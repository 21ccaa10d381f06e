import { inchesText } from './fraction.ts';
import { type Inches, MM_PER_INCH, same } from './inches.ts';

/** Whether a ruler is metric: its marks are whole or half millimetres, and not also sixty-fourths of an inch. */
export function isMetric(step: Inches): boolean {
  const halves = step * MM_PER_INCH * 2;
  const fine = step * 64;
  return same(halves, Math.round(halves)) && !same(fine, Math.round(fine));
}

/** A length in millimetres, to the half: `215.5 mm`. */
export function millimetresText(value: Inches): string {
  return `${Math.round(value * MM_PER_INCH * 2) / 2} mm`;
}

/** How lengths are said where a pattern is cut with this ruler: `8½″`, or `215.5 mm` with a metric one. */
export function lengthsOn(step: Inches): (value: Inches) => string {
  return isMetric(step) ? millimetresText : inchesText;
}
