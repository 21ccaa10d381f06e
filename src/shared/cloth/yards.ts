import { given, inYards, plus, rounded, type Traced } from '../measure/traced.ts';
import type { House } from '../pattern/schema.ts';

/** What to buy for so many inches of strips: with the squaring allowance, in yards, rounded up last. */
export function yardsFor(strips: Traced, house: House): Traced {
  const cloth = house.squaring === 0 ? strips : plus(strips, given(house.squaring, 'squaring up'));
  return rounded(inYards(cloth), house.yardStep, 'up');
}
