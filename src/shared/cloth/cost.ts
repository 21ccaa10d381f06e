import { count, named, plus, type Traced, times } from '../measure/traced.ts';
import type { Pattern } from '../pattern/schema.ts';
import type { Cloth } from './cloth.ts';

/** What one thing that is bought costs. */
export interface CostLine {
  /** A fabric's id, or what else it is. */
  readonly what: { readonly fabric: string } | 'bundle' | 'backing';
  /** Yards, or bundles. */
  readonly amount: Traced;
  /** Money, in whatever the prices are; null when its price is not known. */
  readonly cost: Traced | null;
}

/** What one size costs to make. */
export interface Cost {
  readonly lines: readonly CostLine[];
  /** The sum of what is known. */
  readonly total: Traced;
  /** Whether everything's price is known. Batting is never among it. */
  readonly whole: boolean;
}

/**
 * The cost of one size from the prices in the pattern: yards of each fabric, bundles, backing. Null when no price is known at all.
 * @param bundles how many bundles it takes
 */
export function costOf(cloth: Cloth, pattern: Pattern, bundles = 0): Cost | null {
  const priceOf = (fabric: string) => pattern.fabrics.find(({ id }) => id === fabric)?.price;
  const line = (what: CostLine['what'], amount: Traced, price: number | undefined): CostLine => {
    return { what, amount, cost: price === undefined ? null : times(amount, count(price, 'each')) };
  };
  const lines = [
    ...cloth.needs.flatMap(({ fabric, yards, sheets }) => [
      ...(sheets === undefined ? [] : [line({ fabric }, sheets.count, priceOf(fabric))]),
      // The price of a fabric bought in sheets is a sheet's; what it needs besides as yards has none.
      ...(yards.value > 0 ? [line({ fabric }, yards, sheets === undefined ? priceOf(fabric) : undefined)] : []),
    ]),
    ...(bundles > 0 ? [line('bundle', count(bundles, 'bundles'), pattern.bundle?.price)] : []),
    line('backing', cloth.backing.yards, priceOf(cloth.backing.fabric)),
  ];
  const known = lines.flatMap(({ cost }) => (cost === null ? [] : [money(cost)]));
  const [first, ...rest] = known;
  if (first === undefined) return null;
  return {
    lines,
    total: named(rest.length === 0 ? first : plus(first, ...rest), 'in all'),
    whole: known.length === lines.length,
  };
}

/** A cost is a plain number, whatever it was worked out from. */
function money(cost: Traced): Traced {
  return { ...cost, unit: 'count' };
}
