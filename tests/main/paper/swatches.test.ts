import { describe, expect, it } from 'vitest';
import { makePdf } from '../../../src/main/paper/makePdf.ts';
import { SWATCH_PIXELS } from '../../../src/main/photograph/swatch.ts';
import { workOut } from '../../../src/shared/workroom/workOut.ts';
import { writeBook } from '../../../src/shared/writing/writeBook.ts';
import { samplePattern } from '../helpers/samples.ts';
import { busy } from '../photograph/pictures.ts';

const LETTER = { paper: 'letter', draft: false } as const;

/** Pictures among a PDF's objects (ISO 32000-1, 8.9.5): image XObjects with the filter of JPEG. */
function pictures(pdf: Uint8Array): number {
  return Buffer.from(pdf)
    .toString('latin1')
    .split('endobj')
    .filter((object) => object.includes('/Subtype /Image') && object.includes('/DCTDecode')).length;
}

describe('a fabric that has a photograph', () => {
  it('is shown by it in the printed charts, once in the file however often on paper, and by its hatch in plain ink', async () => {
    const book = writeBook(workOut(samplePattern()));
    const { width, height } = SWATCH_PIXELS;
    const swatches = new Map([['shore', await busy(width, height).jpeg().toBuffer()]]);
    expect(pictures(await makePdf(book, { ...LETTER, plainInk: false, swatches }))).toBe(1);
    expect(pictures(await makePdf(book, { ...LETTER, plainInk: false }))).toBe(0);
    expect(pictures(await makePdf(book, { ...LETTER, plainInk: true, swatches }))).toBe(0);
  });
});
