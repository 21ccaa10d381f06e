import { count, given, named, over, plus, rounded, times } from '../measure/traced.ts';
import type { Pattern } from '../pattern/schema.ts';
import type { Quilt } from '../quilt/quilt.ts';
import type { BindingNeed, PieceLine } from './cloth.ts';
import { usableWidth } from './join.ts';
import { BINDING_KEY, type Letters } from './letters.ts';
import { yardsFor } from './yards.ts';

/** Added to the perimeter for joining the strips, mitring four corners and closing: what published patterns allow. */
const JOINS_AND_CORNERS = 10;

/**
 * Straight binding, cut across the cloth and joined end to end: (perimeter + 10) ÷ usable width strips, up. The rule
 * behind the binding rows of American Patchwork & Quilting patterns.
 */
export function bindingNeed(quilt: Quilt, { binding, house }: Pattern): BindingNeed {
  const perimeter = named(times(count(2, ''), plus(quilt.finished.width, quilt.finished.height)), 'around the quilt');
  const length = plus(perimeter, given(JOINS_AND_CORNERS, 'for joins and corners'));
  const strips = rounded(over(length, usableWidth(house)), 1, 'up');
  const stripWidth = given(binding.strip, 'wide');
  const yards = yardsFor(times(named(strips, 'strips'), stripWidth), house);
  return { fabric: binding.fabric, stripWidth, strips, length, yards };
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
