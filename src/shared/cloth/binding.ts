import { count, given, named, over, plus, rounded, type Traced, times } from '../measure/traced.ts';
import type { House, Pattern } from '../pattern/schema.ts';
import type { Quilt } from '../quilt/quilt.ts';
import type { BindingNeed, PieceLine } from './cloth.ts';
import { usableWidth } from './join.ts';
import { BINDING_KEY, type Letters } from './letters.ts';
import { yardsFor } from './yards.ts';

/** Added to the perimeter at the least, for joins, four corners and closing: what published patterns allow. */
const LEAST_OVER = 10;
/** Strip widths that closing the two ends of the binding takes: they overlap and are joined like the others. */
const CLOSING = 2;

/**
 * Straight binding, cut across the cloth and joined end to end: (perimeter + 10) ÷ usable width strips, up. The rule
 * behind the binding rows of American Patchwork & Quilting patterns. A join on the diagonal takes up a strip's width (the square in
 * which the two strips lie over each other: geometry), and a large quilt has so many that 10 is not enough; then these
 * are counted instead.
 */
export function bindingNeed(quilt: Quilt, { binding, house }: Pattern): BindingNeed {
  const perimeter = named(times(count(2, ''), plus(quilt.finished.width, quilt.finished.height)), 'around the quilt');
  const length = plus(perimeter, overPerimeter(perimeter, binding.strip, house));
  const strips = rounded(over(length, usableWidth(house)), 1, 'up');
  const stripWidth = given(binding.strip, 'wide');
  const yards = yardsFor(times(named(strips, 'strips'), stripWidth), house);
  return { fabric: binding.fabric, stripWidth, strips, length, yards };
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

/** The binding strips as a line of the chart. */
export function bindingLine(need: BindingNeed, { house }: Pattern, letters: Letters): PieceLine {
  const many = need.strips.value;
  return {
    letter: letters[BINDING_KEY] ?? '',
    fabric: need.fabric,
    width: usableWidth(house),
    height: need.stripWidth,
    count: need.strips,
    spare: 0,
    use: [{ block: null, unit: BINDING_KEY, words: 'Binding', patches: 0, count: many }],
    cutAs: 'long-strip',
  };
}
