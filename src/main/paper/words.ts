import { fractionOf, inchesText, yardsText } from '../../shared/measure/fraction.ts';
import type { Inline, Words } from '../../shared/writing/book.ts';
import type { Run } from './engine/setText.ts';
import type { Style } from './type.ts';

const NARROW = '\u202f';
const HARD = '\u00a0';

/** A sentence as runs of text in a style, its strong words bold and its numbers never broken over a line. */
export function runsOf(words: Words, style: Style): Run[] {
  return words.map((inline) => {
    if (typeof inline === 'string') return { text: unparted(inline), style };
    if ('strong' in inline) return { text: unparted(inline.strong), style: { ...style, bold: true } };
    return { text: numberText(inline), style, whole: true };
  });
}

/** A sentence as plain text, spelled as it is printed. */
export function plainText(words: Words): string {
  return words.map(inlineText).join('');
}

function inlineText(inline: Inline): string {
  if (typeof inline === 'string') return unparted(inline);
  return 'strong' in inline ? unparted(inline.strong) : numberText(inline);
}

function numberText({ field, show }: Exclude<Inline, string | { strong: string }>): string {
  const { value } = field;
  switch (show) {
    case 'length':
      return unparted(inchesText(value));
    case 'centimetres':
      return inchesText(value, 'centimetres').replaceAll(' ', HARD);
    case 'yards':
      return unparted(yardsText(value)).replaceAll(' ', HARD);
    case 'metres':
      return yardsText(value, 'centimetres').replaceAll(' ', HARD);
    case 'count':
      return unparted(fractionOf(value)).replaceAll(' ', HARD);
  }
}

/** Keeps a fraction by its whole number, and the two sides of a size together. */
function unparted(text: string): string {
  return text.replace(/(\d) (?=\d+\u2044)/gu, `$1${NARROW}`).replaceAll(' × ', `${HARD}×${HARD}`);
}
