import { Refused } from '../../refusal.ts';
import type { Family, Style } from '../type.ts';
import type { PdfDocument } from './library.ts';

/** A stretch of text that one family has every character of. */
export interface Stretch {
  readonly text: string;
  readonly family: Family;
}

/** Marks that only steer line breaking; the fonts have no picture for them and need none. */
const UNSEEN = /[\u2060\u200b\ufeff\u00ad]/gu;

const OTHER: Readonly<Record<Family, Family>> = {
  'Source Serif 4': 'Source Sans 3',
  'Source Sans 3': 'Source Serif 4',
};

/**
 * The text cut into stretches by the family that can show them: the style's own, else the page's other one.
 * @throws Refused naming the character and its words when neither can: it would print as nothing at all
 */
export function faceFor(document: PdfDocument, raw: string, style: Style): Stretch[] {
  const text = raw.normalize('NFC').replace(UNSEEN, '');
  if (hasAll(document, text, style, style.family)) return [{ text, family: style.family }];
  const stretches: { text: string; family: Family }[] = [];
  for (const character of text) {
    const family = familyOf(document, character, style, text);
    const last = stretches.at(-1);
    if (last?.family === family) last.text += character;
    else stretches.push({ text: character, family });
  }
  return stretches;
}

function familyOf(document: PdfDocument, character: string, style: Style, text: string): Family {
  const other = OTHER[style.family];
  if (hasAll(document, character, style, style.family)) return style.family;
  if (hasAll(document, character, style, other)) return other;
  const near = text.length > 60 ? `${text.slice(0, 60)}…` : text;
  throw new Refused(
    'bad-input',
    `The pattern's fonts have no character for “${character}” in “${near}”. Write it with letters the page can print.`,
  );
}

function hasAll(document: PdfDocument, text: string, style: Style, family: Family): boolean {
  const face = document.provideFont(family, style.bold, style.italics);
  for (const character of text) {
    if (character !== '\n' && !face.font.hasGlyphForCodePoint(character.codePointAt(0) ?? 0)) return false;
  }
  return true;
}
