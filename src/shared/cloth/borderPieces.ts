import { same } from '../measure/inches.ts';
import { count } from '../measure/traced.ts';
import type { Pattern } from '../pattern/schema.ts';
import type { Quilt, StripLeaf } from '../quilt/quilt.ts';
import type { PieceLine } from './cloth.ts';
import { joining } from './join.ts';
import { type BorderPair, borderKey, type Letters } from './letters.ts';

/**
 * The lines of the chart for borders, from the inside out: strips cut across the cloth. A strip longer than the usable width is
 * made by joining strips end to end with straight seams and cutting the length from them; both strips of a pair are
 * cut from one joined length, and each join loses two seams.
 */
export function borderLines(quilt: Quilt, pattern: Pattern, letters: Letters): readonly PieceLine[] {
  const pairs = new Map<string, StripLeaf[]>();
  for (const strip of quilt.strips) {
    const key = borderKey(strip.border, pairOf(strip));
    pairs.set(key, [...(pairs.get(key) ?? []), strip]);
  }
  return [...pairs].flatMap(([key, strips]) =>
    equalLengths(strips).map((equal) => borderLine(key, equal, pattern, letters)),
  );
}

function pairOf(strip: StripLeaf): BorderPair {
  return strip.side === 'left' || strip.side === 'right' ? 'sides' : 'ends';
}

function equalLengths(strips: readonly StripLeaf[]): readonly (readonly StripLeaf[])[] {
  const groups: StripLeaf[][] = [];
  for (const strip of strips) {
    const group = groups.find(([first]) => first !== undefined && same(first.cutLength.value, strip.cutLength.value));
    if (group === undefined) groups.push([strip]);
    else group.push(strip);
  }
  return groups;
}

function borderLine(key: string, strips: readonly StripLeaf[], pattern: Pattern, letters: Letters): PieceLine {
  const [first] = strips as readonly [StripLeaf, ...StripLeaf[]];
  const pair = pairOf(first);
  const many = count(strips.length, strips.length === 1 ? 'strip' : 'strips');
  const lies = first.cutLength.value >= first.cutWidth.value;
  const name = pattern.borders.find((border) => border.id === first.border)?.name ?? first.border;
  return {
    letter: letters[key] ?? '',
    fabric: first.fabric,
    width: lies ? first.cutLength : first.cutWidth,
    height: lies ? first.cutWidth : first.cutLength,
    count: many,
    spare: 0,
    use: [{ block: null, unit: first.border, words: `${name}, ${pair}`, patches: strips.length, count: strips.length }],
    cutAs: 'long-strip',
    ...joining(many, first.cutLength, pattern.house),
  };
}
