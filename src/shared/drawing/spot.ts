import { fractionOf } from '../measure/fraction.ts';
import type { Point } from './turn.ts';

/** A place of the grid along one way, as it is read: `2½`, `1⅓`. What scaling left a hair off is not told. */
export function gridText(value: number): string {
  return fractionOf(Number(value.toFixed(9)) + 0);
}

/** A place on the grid: “3 across, 2½ down”. */
export function placeText({ x, y }: Point): string {
  return `${gridText(x)} across, ${gridText(y)} down`;
}
