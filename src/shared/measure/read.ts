const GLYPHS: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅓': '1/3',
  '⅔': '2/3',
};

/** Every way of writing the same thing made one: true fractions, thin spaces, the fraction slash, the inch mark. */
function plainly(text: string): string {
  return text
    .trim()
    .replace(/\s*(?:″|"|''|in|inch|inches)\.?$/i, '')
    .replace(/[½¼¾⅛⅜⅝⅞⅓⅔]/g, (glyph) => ` ${GLYPHS[glyph]}`)
    .replace(/⁄/g, '/')
    .replace(/,/g, '.')
    .replace(/[\s\u2009\u202f\u00a0]+/g, ' ')
    .replace(/ ?\/ ?/g, '/')
    .trim();
}

/**
 * A length or number as a maker types it: `8 1/2`, `8-1/2`, `8½`, `8.5`, `8,5`, `17/2`, with or without an inch mark.
 * @returns the number, or null when the text is none of these; never less than zero
 */
export function readNumber(text: string): number | null {
  const match = /^(?:(\d+(?:\.\d*)?|\.\d+)|(?:(\d+)(?: |-))?(\d+)\/(\d+))$/.exec(plainly(text));
  if (match === null) return null;
  const [, decimal, whole = '0', top, bottom] = match;
  if (decimal !== undefined) return Number(decimal);
  if (Number(bottom) === 0) return null;
  return Number(whole) + Number(top) / Number(bottom);
}
