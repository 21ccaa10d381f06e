import type { Inches } from '../measure/inches.ts';
import { count, given, named, type TracedSize, times } from '../measure/traced.ts';
import type { Unit } from '../piecing/piecing.ts';

/**
 * What a unit measures once it is sewn in all round, as the trade draws it.
 * @param grid finished inches of one grid unit
 */
export function finishedSize(unit: Unit, grid: Inches): TracedSize {
  const side = (units: number) => named(times(count(units, 'of the grid'), given(grid, 'finished')), 'finished');
  return { width: side(unit.width), height: side(unit.height) };
}
