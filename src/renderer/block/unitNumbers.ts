import type { Unit, UnitKey } from '../../shared/piecing/piecing.ts';

/** A number for each distinct unit of a block, in sewing order: on the picture, in the list and in the panel. */
export function unitNumbers(units: readonly Unit[]): Readonly<Record<UnitKey, string>> {
  return Object.fromEntries(units.map(({ key }, i) => [key, String(i + 1)]));
}
