import { count, given, named, plus, rounded, type Traced, times } from '../measure/traced.ts';
import type { House } from '../pattern/schema.ts';

/** The seams on both sides of a piece, as a part of its cut size. */
export function twoSeams(house: House): Traced {
  return named(times(count(2, ''), given(house.seam, 'seam')), 'for two seams');
}

/** A finished length as it is cut: with a seam on each side, on the nearest mark of the ruler. */
export function cutTo(finished: Traced, house: House): Traced {
  return rounded(plus(finished, twoSeams(house)), house.step, 'near');
}
