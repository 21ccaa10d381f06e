import type { Inches } from '../../measure/inches.ts';
import { given, named, plus, rounded, type Traced, times } from '../../measure/traced.ts';
import type { House } from '../../pattern/schema.ts';
import { TWO } from '../growing.ts';

type Ruler = Pick<House, 'seam' | 'step'>;

const DIAGONAL = given(Math.SQRT2, 'of a diagonal', 'count');

/** What a square measures from corner to corner. */
export function diagonalOf(side: Traced): Traced {
  return named(times(side, DIAGONAL), 'from corner to corner');
}

/** s(2 + 2√2): what the long side of a triangle cut four to a square needs beyond its finished length (plain geometry). */
export function quarterAdd({ seam }: Ruler): Inches {
  return seam * (2 + 2 * Math.SQRT2);
}

/** s(2 + √2): what the short side of a triangle cut two to a square needs beyond its finished length (plain geometry). */
export function halfAdd({ seam }: Ruler): Inches {
  return seam * (2 + Math.SQRT2);
}

/**
 * The square that side triangles are cut from, twice diagonally: block × √2 + 1¼ with seams of ¼, up to the ruler (Moonlight
 * Quilters, guild). The 1¼ is s(2 + 2√2) on the ruler.
 * @param block finished side of what they are sewn to, inches
 * @param float how far they reach beyond the points of the blocks, finished inches
 */
export function sideSquare(block: Traced, float: Inches, house: House): Traced {
  return squareFor(diagonalOf(block), float, quarterAdd(house), house);
}

/**
 * The square that corner triangles are cut from, once diagonally: block × √2 ÷ 2 + 7/8 with seams of ¼, up to the ruler
 * (Moonlight Quilters, guild). The 7/8 is s(2 + √2) on the ruler.
 */
export function cornerSquare(block: Traced, float: Inches, house: House): Traced {
  const half = named(times(block, given(Math.SQRT1_2, 'of half a diagonal', 'count')), 'half from corner to corner');
  return squareFor(half, float, halfAdd(house), house);
}

/**
 * As the trade adds it up; more only where the triangles float and that would not reach. Both sums grow by twice the float:
 * once for each end of the side that lies on the edge of the quilt.
 */
function squareFor(finished: Traced, float: Inches, add: Inches, house: House): Traced {
  const reach = float > 0 ? [times(TWO, given(float, 'beyond the points'))] : [];
  const usual = rounded(given(add, 'for seams'), house.step, 'up');
  const byTrade = plus(finished, ...(float >= house.step / 2 ? reach : []), named(usual, 'for seams'));
  const enough = plus(finished, ...reach, given(add, 'for seams'));
  return rounded(byTrade.value >= enough.value - 1e-9 ? byTrade : enough, house.step, 'up');
}

/**
 * How long a strip is cut whose ends the edge of the quilt cuts off on the diagonal: its longest edge and, at each end, the room
 * that a seam takes along the strip, s(1 + √2) (plain geometry).
 * @param longest finished length of its longest edge, inches
 */
export function slantedLength(longest: Inches, house: House): Traced {
  const end = given(house.seam * (1 + Math.SQRT2), 'for a slanted end');
  return rounded(
    plus(given(longest, 'along the longer edge'), named(times(TWO, end), 'for two slanted ends')),
    house.step,
    'up',
  );
}
