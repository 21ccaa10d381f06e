import { readdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';

/** pdfmake's own font reader: what it cannot find, paper cannot print. */
const requireHere = createRequire(import.meta.url);
const fontkit = createRequire(requireHere.resolve('pdfmake'))('fontkit') as {
  openSync(file: string): { postscriptName: string; hasGlyphForCodePoint(code: number): boolean };
};

const folder = resolve(import.meta.dirname, '../../resources/fonts');
const fonts = readdirSync(folder).filter((file) => file.endsWith('.ttf'));
const needed = '½¼¾⅛⅜⅝⅞⅓⅔″′×⁄√−–—→←↑↓°±©“”‘’…·\u00a0\u2009\u202f';

describe('the fonts that paper and window share', () => {
  it('are four cuts of two families', () => {
    expect(fonts).toHaveLength(8);
  });

  it.each(fonts)('%s has every fraction, mark and arrow a pattern uses', (file) => {
    const font = fontkit.openSync(join(folder, file));
    expect([...needed].filter((mark) => !font.hasGlyphForCodePoint(mark.codePointAt(0) ?? 0))).toEqual([]);
  });
});
