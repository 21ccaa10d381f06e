import type { FaceInDocument, PdfDocument } from './library.ts';

/**
 * Words already shaped, by font file: where a document's font looks first. A book says the same words again and again, and
 * a preview makes the same book again and again; finding each word's glyphs anew took a third of the time.
 */
const shaped = new Map<string, FaceInDocument['layoutCache']>();

/** So many words of a font are kept; a long session begins anew rather than grow for ever. */
const MOST = 20_000;

const FACES = [
  ['Source Serif 4', false],
  ['Source Serif 4', true],
  ['Source Sans 3', false],
  ['Source Sans 3', true],
] as const;

/** Lets a new document's fonts know the words that other documents have shaped. */
export function shareShapedWords(document: PdfDocument): void {
  for (const [family, bold] of FACES) {
    const file = document.getFontFile(family, bold, false) ?? family;
    const known = shaped.get(file);
    const words = known === undefined || Object.keys(known).length > MOST ? Object.create(null) : known;
    shaped.set(file, words);
    document.provideFont(family, bold, false).layoutCache = words;
  }
}
