import { longer, toRuler } from '../measure/inches.ts';
import { count, given, minus, named, over, rounded, type Traced, times } from '../measure/traced.ts';
import type { House } from '../pattern/schema.ts';

/** The usable width of the cloth. */
export function usableWidth(house: House): Traced {
  return given(house.usableWidth, 'usable width');
}

/** What a straight join of two pieces end to end takes up: a seam on each. */
function lostInAJoin(house: House): Traced {
  return named(times(count(2, ''), given(house.seam, 'seam')), 'lost in a join');
}

/**
 * How many widths of cloth, joined edge to edge with straight seams, reach this far. Each join loses two seams: n widths reach
 * n × usable width − (n − 1) × 2 seams, so n = (reach − 2 seams) ÷ (usable width − 2 seams), up.
 */
export function widthsFor(reach: Traced, house: House): Traced {
  const lost = lostInAJoin(house);
  const gain = minus(usableWidth(house), lost);
  // Cloth narrower than its own seams joins to nothing; a finding says so elsewhere, here it only must not run away.
  if (gain.value <= 0) return count(1, 'width');
  return rounded(over(minus(reach, lost), gain), 1, 'up');
}

/** For strips longer than the cloth is wide: the widths that are joined and cut into them. Nothing for others. */
export function joining(many: Traced, length: Traced, house: House): { readonly joined?: Traced } {
  if (!longer(length.value, house.usableWidth)) return {};
  return { joined: widthsFor(times(many, named(length, 'long')), house) };
}

/** How wide the last of `widths` joined widths needs to be, on the ruler. */
export function lastWidth(reach: Traced, widths: Traced, house: House): number {
  const gain = house.usableWidth - lostInAJoin(house).value;
  const rest = reach.value - (widths.value - 1) * Math.max(0, gain);
  return Math.min(house.usableWidth, toRuler(rest, house.step, 'up'));
}
