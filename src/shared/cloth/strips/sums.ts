import type { Inches } from '../../measure/inches.ts';
import { commonStep } from './grid.ts';

/** Above this many steps the sums are not worked out. */
const MOST_STEPS = 60_000;

/**
 * The least length, at or above `bound`, that strips of these heights can add up to: a plan's length is always such a sum.
 * Lengths that lie on no common ruler marks leave the bound as it is.
 */
export function nextSum(bound: Inches, heights: readonly Inches[]): Inches {
  const step = commonStep(heights);
  if (step === null || step === 0) return bound;
  const needed = Math.ceil(bound / step - 1e-6);
  const marks = heights.map((height) => Math.round(height / step));
  const last = needed + Math.min(...marks);
  if (last > MOST_STEPS) return needed * step;
  const reached = new Uint8Array(last + 1);
  reached[0] = 1;
  for (const mark of marks) {
    for (let at = mark; at <= last; at++) if (reached[at - mark] === 1) reached[at] = 1;
  }
  for (let at = needed; at <= last; at++) if (reached[at] === 1) return at * step;
  return needed * step;
}
