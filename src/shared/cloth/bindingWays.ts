import { longer } from '../measure/inches.ts';
import { count, given, named, over, plus, rounded, type Traced, times } from '../measure/traced.ts';
import type { House, Pattern } from '../pattern/schema.ts';
import type { Quilt } from '../quilt/quilt.ts';
import { biasStrips, stripsThatReach } from './biasStrips.ts';
import type { BindingNeed } from './cloth.ts';
import { usableWidth } from './join.ts';
import { wholeLength, yardsFor } from './yards.ts';

/** Added to the perimeter at the least, for joins, four corners and closing: what published patterns allow. */
const LEAST_OVER = 10;
/** Strip widths that closing the two ends of the binding takes: they overlap and are joined like the others. */
const CLOSING = 2;
/** Lost of a square's side in the tube that a continuous strip is cut from: its two seams, and the ends that do not meet. */
const LOST = 1;
/** A cloth so narrow that this many squares do not do is no cloth. */
const MOST_SQUARES = 60;
/** A cloth whose bias strips do not reach round in so many inches of it is no cloth. */
const LONGEST = 400;

/** The ways of cutting the binding of one quilt, to be compared: straight, in bias strips, as one continuous bias strip. */
export function bindingWays(quilt: Quilt, pattern: Pattern): readonly BindingNeed[] {
  return [straightNeed(quilt, pattern), biasNeed(quilt, pattern), continuousNeed(quilt, pattern)];
}

/**
 * Straight binding, cut across the cloth and joined end to end: (perimeter + 10) ÷ usable width strips, up. The rule
 * behind the binding rows of American Patchwork & Quilting patterns. A join on the diagonal takes up a strip's width (the square in
 * which the two strips lie over each other: geometry), and a large quilt has so many that 10 is not enough; then these
 * are counted instead.
 */
export function straightNeed(quilt: Quilt, { binding, house }: Pattern): BindingNeed {
  const perimeter = aroundQuilt(quilt);
  const length = plus(perimeter, overPerimeter(perimeter, binding.strip, house));
  const strips = rounded(over(length, usableWidth(house)), 1, 'up');
  const stripWidth = given(binding.strip, 'wide');
  const yards = yardsFor(times(named(strips, 'strips'), stripWidth), house);
  return { fabric: binding.fabric, cut: 'straight', stripWidth, strips, length, yards };
}

/**
 * Binding joined from bias strips. They are cut from a square, the smallest in whole inches whose strips reach; where that is
 * wider than the cloth, from a length of the whole width. What joins take up is in the strips, so the length
 * is the perimeter and what its corners and closing take.
 */
export function biasNeed(quilt: Quilt, { binding, house }: Pattern): BindingNeed {
  const corners = given(Math.max(LEAST_OVER, CLOSING * binding.strip), 'for corners and closing');
  const length = plus(aroundQuilt(quilt), corners);
  const whole = wholeLength(house);
  const usable = house.usableWidth;
  for (let side = whole; ; side += whole) {
    const width = Math.min(side, usable);
    const many = stripsThatReach(biasStrips({ width, height: side }, binding.strip), length.value, house.seam);
    if (many === null && side < LONGEST) continue;
    const strips = count(many ?? 1, many === 1 ? 'strip' : 'strips');
    const height = given(side, `at the least, for ${strips.value} bias strips that reach round when joined`);
    const from = {
      pieces: count(1, 'piece'),
      width: longer(side, usable) ? usableWidth(house) : height,
      height,
    };
    return biasOf({ binding, house }, { cut: 'bias', strips, from, length });
  }
}

/**
 * One continuous bias strip takes up the area of its square, so the square's side is the root of length × strip width (plain
 * geometry), and an inch for the seams of the tube and its ends, in whole inches, up. Where one square is wider
 * than the cloth, as many equal ones as are needed.
 */
export function continuousNeed(quilt: Quilt, pattern: Pattern): BindingNeed {
  const { binding, house } = pattern;
  const { length } = straightNeed(quilt, pattern);
  for (let many = 1; ; many++) {
    const pieces = count(many, many === 1 ? 'square' : 'squares');
    const area = over(times(length, count(binding.strip, 'inches wide')), pieces);
    const side = given(Math.sqrt(area.value), 'root of length × strip width');
    const square = rounded(plus(side, given(LOST, 'for seams and ends')), wholeLength(house), 'up');
    if (longer(square.value, house.usableWidth) && many < MOST_SQUARES) continue;
    const strips = count(many, many === 1 ? 'strip' : 'strips');
    const from = { pieces, width: square, height: square };
    return biasOf(pattern, { cut: 'continuous', strips, from, length });
  }
}

function biasOf(
  { binding, house }: Pick<Pattern, 'binding' | 'house'>,
  way: Pick<BindingNeed, 'cut' | 'strips' | 'length'> & { readonly from: NonNullable<BindingNeed['from']> },
): BindingNeed {
  const { pieces, height } = way.from;
  const cloth = pieces.value === 1 ? height : times(pieces, named(height, 'side of a square'));
  return {
    fabric: binding.fabric,
    stripWidth: given(binding.strip, 'wide'),
    ...way,
    yards: yardsFor(named(cloth, 'of cloth'), house),
  };
}

function aroundQuilt({ finished }: Quilt): Traced {
  return named(times(count(2, ''), plus(finished.width, finished.height)), 'around the quilt');
}

/**
 * What is added to the perimeter. n strips with n − 1 joins reach round and close when n × usable width ≥ perimeter +
 * (n − 1 + 2) × strip width, so n = (perimeter + strip width) ÷ (usable width − strip width), up.
 */
function overPerimeter(perimeter: Traced, strip: number, house: House): Traced {
  const gain = house.usableWidth - strip;
  const joined = gain > 0 ? Math.ceil((perimeter.value + strip) / gain - 1e-9) : 1;
  return given(Math.max(LEAST_OVER, (joined - 1 + CLOSING) * strip), 'for joins and corners');
}
