import type { Level } from '../measure/finding.ts';
import type { Inches } from '../measure/inches.ts';

/** From this much on, a seam that does not agree stops publishing; less can be eased in (common practice). */
const STOPS_FROM: Inches = 1 / 16;

/** How much a disagreement of so many inches matters. */
export function levelOf(by: Inches): Level {
  return Math.abs(by) >= STOPS_FROM - 1e-9 ? 'stops' : 'look';
}
