import type { Inches } from '../../measure/inches.ts';
import type { Value } from '../../recipe/schema.ts';
import { allot } from './allot.ts';
import { type Supply, VALUES } from './allotment.ts';
import { isEnough } from './stress.ts';
import type { Wants } from './wants.ts';

/** The fewest strips of each value that are enough, at one length of strip. */
export type Fewest = Readonly<Record<Value, number>>;

/** More strips than this of one value are no bundle. */
const MOST = 400;

/**
 * The fewest strips of each value that the pattern can be cut from. Null when no number will do: something that has to
 * come from one strip is longer than it.
 */
export function fewestStrips(wants: Wants, length: Inches, square?: true): Fewest | null {
  const values = { light: MOST, medium: MOST, dark: MOST };
  const plenty: Supply = square ? { length, values, square } : { length, values };
  if (!isEnough(allot(wants, plenty))) return null;
  const found = VALUES.map((value) => {
    let [low, high] = [-1, MOST];
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      const supply = { ...plenty, values: { ...plenty.values, [value]: middle } };
      if (isEnough(allot(wants, supply))) high = middle;
      else low = middle;
    }
    return [value, high] as const;
  });
  return Object.fromEntries(found) as Record<Value, number>;
}

/** How many bundles like this one are enough; null when no number is. */
export function bundlesNeeded(wants: Wants, supply: Supply): number | null {
  for (let many = 1; many <= MOST; many++) {
    const values = Object.fromEntries(VALUES.map((value) => [value, supply.values[value] * many]));
    if (isEnough(allot(wants, { ...supply, values: values as Record<Value, number> }))) return many;
    if (VALUES.every((value) => (values[value] ?? 0) > MOST || (values[value] ?? 0) === 0)) return null;
  }
  return null;
}
