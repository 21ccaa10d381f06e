import type { Inches } from '../measure/inches.ts';
import type { BlockChoice, House } from '../pattern/schema.ts';
import type { Unit } from '../piecing/piecing.ts';

/**
 * Inches added to the pieces of a unit that is trimmed to size: what the block says of this very unit, else of its kind, else
 * what the house says of its kind, else nothing.
 */
export function oversizeOf(unit: Unit, choice: Pick<BlockChoice, 'oversize'> | undefined, house: House): Inches {
  const own = choice?.oversize;
  return own?.[unit.key] ?? own?.[unit.kind] ?? house.oversize?.[unit.kind] ?? 0;
}
