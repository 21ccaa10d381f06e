import { CENTIMETRE, clothStep, isMetric } from '../measure/metric.ts';
import { given, inYards, named, over, plus, rounded, type Traced } from '../measure/traced.ts';
import type { House } from '../pattern/schema.ts';

/** What to buy for so many inches of strips: with the squaring allowance, in yards, rounded up last. */
export function yardsFor(strips: Traced, house: House): Traced {
  const cloth = house.squaring === 0 ? strips : plus(strips, given(house.squaring, 'squaring up'));
  return bought(cloth, house);
}

/** What to buy for so much cloth: what the wash takes is added, and yards are rounded up last. */
export function bought(cloth: Traced, house: House): Traced {
  return rounded(inYards(beforeWash(cloth, house)), clothStep(house), 'up');
}

/** Cloth that is still so long once it is washed: a twentieth lost leaves nineteen parts of twenty, so it is divided by 0.95. */
function beforeWash(cloth: Traced, { shrinkage = 0 }: House): Traced {
  if (shrinkage === 0) return cloth;
  return over(named(cloth, cloth.name ?? 'of cloth'), given(1 - shrinkage / 100, 'left by the wash', 'count'));
}

/** What backing, batting and bias squares are asked for in: whole inches, or whole centimetres. */
export function wholeLength({ step }: House): number {
  return isMetric(step) ? CENTIMETRE : 1;
}
