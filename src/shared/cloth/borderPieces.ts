import { same } from '../measure/inches.ts';
import { count } from '../measure/traced.ts';
import type { Border, House, Pattern } from '../pattern/schema.ts';
import type { Quilt, StripLeaf } from '../quilt/quilt.ts';
import type { PieceLine } from './cloth.ts';
import { joining, lostInAJoin } from './join.ts';
import { type BorderPair, borderKey, type Letters } from './letters.ts';
import { lengthwise, patchLines } from './settingPieces.ts';

/**
 * The lines of the chart for borders, from the inside out: their strips, then what stands in their corners. Strips are cut
 * across the cloth, and one longer than the usable width is made by joining strips end to end: both strips of a pair are cut
 * from one joined length, and each join loses some of it. A border cut lengthwise has each strip in one piece.
 */
export function borderLines(quilt: Quilt, pattern: Pattern, letters: Letters): readonly PieceLine[] {
  return pattern.borders.flatMap((border) => {
    const corners = quilt.patches.filter((patch) => patch.border === border.id);
    return [...stripLines(quilt, border, pattern, letters), ...patchLines(corners, pattern, letters)];
  });
}

/** The lines for the strips of one border. */
export function stripLines(
  quilt: Quilt,
  border: Border,
  { house, fabrics }: Pick<Pattern, 'house' | 'fabrics'>,
  letters: Letters,
): readonly PieceLine[] {
  const directed = fabrics.find(({ id }) => id === border.fabric)?.direction !== undefined;
  const pairs = new Map<BorderPair, StripLeaf[]>();
  for (const strip of quilt.strips) {
    if (strip.border === border.id) pairs.set(pairOf(strip), [...(pairs.get(pairOf(strip)) ?? []), strip]);
  }
  return [...pairs].flatMap(([pair, strips]) =>
    equalLengths(strips).map((equal) => {
      const line = borderLine(letters[borderKey(border.id, pair)] ?? '', equal, border, house);
      if (!directed) return line;
      return pair === 'sides' ? lengthwise(line) : { ...acrossOnly(line, equal, border, house), upright: true };
    }),
  );
}

/** Which pair of strips of its border a strip is one of. */
export function pairOf(strip: StripLeaf): BorderPair {
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

/** Strips along the top and bottom of a print that has a direction lie across the cloth, whatever the border's others do. */
function acrossOnly(line: PieceLine, strips: readonly StripLeaf[], border: Border, house: House): PieceLine {
  if (!line.lengthwise) return line;
  const { lengthwise: _along, ...across } = border;
  return borderLine(line.letter, strips, across, house);
}

function borderLine(letter: string, strips: readonly StripLeaf[], border: Border, house: House): PieceLine {
  const [first] = strips as readonly [StripLeaf, ...StripLeaf[]];
  const { cutLength, cutWidth, fabric } = first;
  const many = count(strips.length, strips.length === 1 ? 'strip' : 'strips');
  const lies = cutLength.value >= cutWidth.value;
  const words = `${border.name}, ${pairOf(first)}`;
  const line: PieceLine = {
    letter,
    fabric,
    width: lies ? cutLength : cutWidth,
    height: lies ? cutWidth : cutLength,
    count: many,
    spare: 0,
    use: [{ block: null, unit: first.border, words, patches: strips.length, count: strips.length }],
    cutAs: 'long-strip',
  };
  if (border.lengthwise) return { ...line, lengthwise: true };
  const lost = border.joins === 'diagonal' ? lostInAJoin(house, cutWidth.value) : undefined;
  return { ...line, ...joining(many, cutLength, house, lost) };
}
