import type { Unit } from '../piecing.ts';

/**
 * The unit as one of a kind.
 * @throws TypeError when it is another kind: a method was asked to plan a unit that it does not make
 */
export function ofKind<K extends Unit['kind']>(unit: Unit, kind: K): Extract<Unit, { kind: K }> {
  if (unit.kind !== kind) throw new TypeError(`A method for ${kind} was asked to make ${unit.key}`);
  return unit as Extract<Unit, { kind: K }>;
}
