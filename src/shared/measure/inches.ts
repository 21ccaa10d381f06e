/** A length in inches. Every eighth, sixteenth and sixty-fourth is exact in floating point. */
export type Inches = number;

/** Lengths closer than this are the same length. The one tolerance of the house: a hundred-thousandth of an inch. */
const TOLERANCE = 1e-5;

/** Whether two lengths in inches are the same length. Never used to decide whether two edges are the same edge. */
export function same(a: Inches, b: Inches): boolean {
  return Math.abs(a - b) < TOLERANCE;
}

/** Whether `a` is longer than `b` by more than the tolerance. */
export function longer(a: Inches, b: Inches): boolean {
  return a - b >= TOLERANCE;
}

/** Which way a length is taken to the ruler. */
export type Way = 'up' | 'down' | 'near';

/**
 * The nearest mark of a ruler whose marks are `step` inches apart: at or above `value` for 'up', at or below for 'down'.
 * A value already on a mark (within the tolerance) stays there.
 * @throws RangeError when the step is not a positive finite number
 */
export function toRuler(value: Inches, step: Inches, way: Way): Inches {
  if (!(step > 0 && Number.isFinite(step))) throw new RangeError(`A ruler step must be more than zero, not ${step}`);
  const marks = value / step;
  const nearest = Math.round(marks);
  if (same(nearest * step, value) || way === 'near') return nearest * step;
  return (way === 'up' ? Math.ceil(marks) : Math.floor(marks)) * step;
}

/** Whether a length falls on a mark of a ruler with this step. */
export function onRuler(value: Inches, step: Inches): boolean {
  return same(toRuler(value, step, 'near'), value);
}

/** 1 in = 25.4 mm exactly, 1 yd = 36 in = 0.9144 m exactly (NBS Circular 572 addendum, 1960). */
export const MM_PER_INCH = 25.4;
export const INCHES_PER_YARD = 36;
