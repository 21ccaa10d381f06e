import { same } from '../../measure/inches.ts';
import type { Unit } from '../piecing.ts';

export type Geese = Extract<Unit, { kind: 'geese' }>;

/** Flying geese are twice as wide as high: only then do both seams run at 45 degrees. */
export function isTwiceAsWide(unit: Unit): boolean {
  return unit.kind === 'geese' && same(unit.width, 2 * unit.height);
}
