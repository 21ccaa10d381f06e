import type { Pattern } from '../pattern/schema.ts';
import type { Quilt } from '../quilt/quilt.ts';
import { biasNeed, continuousNeed, straightNeed } from './bindingWays.ts';
import type { BindingNeed, PieceLine } from './cloth.ts';
import { usableWidth } from './join.ts';
import { BINDING_KEY, type Letters } from './letters.ts';

/** The binding as the pattern has it cut: straight across the cloth where it does not say. */
export function bindingNeed(quilt: Quilt, pattern: Pattern): BindingNeed {
  const { cut } = pattern.binding;
  if (cut === undefined) return straightNeed(quilt, pattern);
  return cut === 'bias' ? biasNeed(quilt, pattern) : continuousNeed(quilt, pattern);
}

/** The binding as a line of the chart: its strips across the cloth, or the pieces that bias strips are cut from. */
export function bindingLine(need: BindingNeed, { house }: Pattern, letters: Letters): PieceLine {
  const { fabric, from } = need;
  const many = (from?.pieces ?? need.strips).value;
  const words = from === undefined ? 'Binding' : 'Binding, cut on the bias';
  return {
    letter: letters[BINDING_KEY] ?? '',
    fabric,
    width: from?.height ?? usableWidth(house),
    height: from?.width ?? need.stripWidth,
    count: from?.pieces ?? need.strips,
    spare: 0,
    use: [{ block: null, unit: BINDING_KEY, words, patches: 0, count: many }],
    cutAs: from === undefined ? 'long-strip' : 'piece',
  };
}
