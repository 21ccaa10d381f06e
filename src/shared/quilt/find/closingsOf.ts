import type { House } from '../../pattern/schema.ts';
import type { Quilt } from '../quilt.ts';
import { type Closings, closeBorder } from './closeBorder.ts';

/** How a pieced border of a quilt can be made to close; null for a plain one, and for one this size has not. */
export function closingsOf(quilt: Quilt, border: string, { step }: House): Closings | null {
  const laid = quilt.borders.find((one) => one.border === border);
  if (laid?.units === undefined) return null;
  const { width, length, high } = laid.units;
  return closeBorder({ inside: laid.inside, width, aspect: length / width, high, step });
}
