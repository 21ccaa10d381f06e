import { type Inches, longer, toRuler } from '../measure/inches.ts';
import { count, given, minus, named, over, rounded, type Traced, times } from '../measure/traced.ts';
import type { House } from '../pattern/schema.ts';

/** The usable width of the cloth. */
export function usableWidth(house: House): Traced {
  return given(house.usableWidth, 'usable width');
}

/**
 * What joining two strips end to end takes up: a seam of each when straight; when diagonal the cut width of a strip, for they
 * are laid across one another and sewn from corner to corner (plain geometry).
 */
export function lostInAJoin(house: House, strip?: Inches): Traced {
  if (strip !== undefined) return given(strip, 'lost in a diagonal join');
  return named(times(count(2, ''), given(house.seam, 'seam')), 'lost in a join');
}

/**
 * How many widths of cloth, joined edge to edge, reach this far. Each join loses some: n widths reach
 * n × usable width − (n − 1) × lost, so n = (reach − lost) ÷ (usable width − lost), up.
 */
export function widthsFor(reach: Traced, house: House, lost: Traced = lostInAJoin(house)): Traced {
  const gain = minus(usableWidth(house), lost);
  // Cloth narrower than its own seams joins to nothing; a finding says so elsewhere, here it only must not run away.
  if (gain.value <= 0) return count(1, 'width');
  return rounded(over(minus(reach, lost), gain), 1, 'up');
}

/** For strips longer than the cloth is wide: the widths that are joined and cut into them. Nothing for others. */
export function joining(
  many: Traced,
  length: Traced,
  house: House,
  lost?: Traced,
): { readonly joined?: Traced; readonly lostInJoin?: Traced } {
  if (!longer(length.value, house.usableWidth)) return {};
  const joined = widthsFor(times(many, named(length, 'long')), house, lost);
  return lost === undefined ? { joined } : { joined, lostInJoin: lost };
}

/** How wide the last of `widths` joined widths needs to be, on the ruler. */
export function lastWidth(reach: Traced, widths: Traced, house: House, lost: Traced = lostInAJoin(house)): number {
  const gain = house.usableWidth - lost.value;
  const rest = reach.value - (widths.value - 1) * Math.max(0, gain);
  return Math.min(house.usableWidth, toRuler(rest, house.step, 'up'));
}
