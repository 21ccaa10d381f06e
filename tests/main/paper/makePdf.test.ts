import { inflateSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { makePdf } from '../../../src/main/paper/makePdf.ts';
import { tracedText } from '../../../src/shared/measure/traced.ts';
import type { Words } from '../../../src/shared/writing/book.ts';
import { cuttingChart, richBook, SIZES } from './fixtures/richBook.ts';
import { all, type OpenedPdf, openPdf, solid } from './readPdf.ts';

const LETTER = { paper: 'letter', plainInk: false, draft: false } as const;

describe('a book made into a PDF and opened again', () => {
  let pdf: OpenedPdf;
  let bytes: Uint8Array;

  beforeAll(async () => {
    bytes = await makePdf(richBook(), LETTER);
    pdf = await openPdf(bytes);
  });
  afterAll(() => pdf.close());

  it('says what it is', () => {
    expect(pdf.info).toMatchObject({
      Title: 'Harbour Lights',
      Author: 'Saltmarsh & Thread',
      Language: 'en',
      PDFFormatVersion: '1.7',
      CreationDate: 'D:20260301000000Z',
    });
  });

  it('has a bookmark for each section and heading', () => {
    expect(pdf.bookmarks).toEqual([
      'Cover',
      'Before you begin',
      ' What you will need',
      'Cutting',
      'Units',
      ' Half-square triangles and four-patches',
      'Blocks',
      'The quilt, size by size',
      'Colouring sheet',
      'Rights',
    ]);
  });

  it('prints every row of the cutting chart with the numbers of the book', () => {
    const chart = cuttingChart();
    const rows = pdf.pages.flatMap(({ structure }) =>
      all(structure, 'TR').map((row) => row.inside.map((cell) => solid(cell.text))),
    );
    for (const row of chart.rows) expect(rows).toContainEqual(row.cells.map((cell) => solid(spelled(cell))));
    // Spelled out by hand from the fixture: a 4 11/16 by 7 3/8 rectangle, 50 of them for the cot (4 × 5 blocks, 5 each, halved).
    expect(rows).toContainEqual(['D', '411⁄16″×7⅜″', 'Half-squaretriangleunits', '50', '105', '200', '225', '275']);
  });

  it('repeats the head of a chart on every page the chart runs over', () => {
    const running = pdf.pages.filter(({ structure }) => all(structure, 'TR').some((row) => row.inside.length === 8));
    expect(running).toHaveLength(2);
    for (const page of running) {
      const top = Math.min(...page.runs.filter((run) => run.text.includes('square')).map((run) => run.y));
      for (const title of ['Piece', 'Cut size', 'Used in', 'Cot', 'Double']) {
        const heads = page.runs.filter((run) => run.text === title && run.y < top);
        expect(heads, title).toHaveLength(1);
      }
    }
  });

  it('keeps each step with its figures, and counts every size under it', () => {
    const steps = pdf.pages.flatMap(({ structure }) =>
      all(structure, 'LI').filter((item) => all(item, 'Figure').length > 0),
    );
    expect(steps.map((step) => all(step, 'Figure').length)).toEqual([1, 2, 1, 5]);
    for (const { name } of SIZES) expect(solid(steps[1]?.text ?? '')).toContain(solid(name));
    expect(solid(steps[1]?.text ?? '')).toContain('MakeCot40·Laporpicnicrug84·Twin160·Double180');
  });

  it('tells every figure to those who cannot see it', () => {
    const figures = pdf.pages.flatMap(({ structure }) => all(structure, 'Figure'));
    expect(figures.length).toBeGreaterThan(15);
    for (const figure of figures) expect(figure.alt).not.toBe('');
  });

  it('numbers every page but the cover', () => {
    const { length } = pdf.pages;
    expect(pdf.pages[0]?.text).not.toContain(`1 of ${length}`);
    pdf.pages.slice(1).forEach((page, i) => {
      expect(page.text).toContain(`${i + 2} of ${length}`);
    });
  });

  it('never prints a letter too small to read, nor one off the frame', () => {
    for (const page of pdf.pages) {
      for (const run of page.runs) {
        // look.md: nothing under 8 points but letters in figures, which are 7.5.
        expect(run.size).toBeGreaterThanOrEqual(7.5);
        expect(run.x).toBeGreaterThan(18);
        expect(run.x + run.width).toBeLessThanOrEqual(page.width - 47);
      }
    }
  });

  it('gives the same bytes for the same book', async () => {
    const again = await makePdf(richBook(), LETTER);
    expect(Buffer.compare(again, bytes)).toBe(0);
  });
});

describe('paper, ink and drafts', () => {
  it('prints on US Letter and on A4', async () => {
    // US Letter is 8½ × 11 in; A4 is 210 × 297 mm (ISO 216).
    const sizes = { letter: [8.5 * 72, 11 * 72], a4: [(210 / 25.4) * 72, (297 / 25.4) * 72] } as const;
    for (const paper of ['letter', 'a4'] as const) {
      const pdf = await openPdf(await makePdf(richBook(), { ...LETTER, paper }));
      for (const page of pdf.pages) {
        expect(page.width).toBeCloseTo(sizes[paper][0], 1);
        expect(page.height).toBeCloseTo(sizes[paper][1], 1);
      }
      await pdf.close();
    }
  });

  it('says on every page of a draft that it is one, and nowhere else', async () => {
    const draft = await openPdf(await makePdf(richBook(), { ...LETTER, draft: true }));
    for (const page of draft.pages) expect(page.text).toContain('Draft, not for sale');
    await draft.close();
    const unfit = { ...richBook(), findings: [{ level: 'stops' as const, what: 'Too long.', where: { path: '' } }] };
    const said = await openPdf(await makePdf(unfit, { ...LETTER, draft: true }));
    for (const page of said.pages) expect(page.text).toContain('Draft – does not fit yet, not for sale');
    await said.close();
    const sold = await openPdf(await makePdf(richBook(), LETTER));
    for (const page of sold.pages) expect(page.text).not.toContain('Draft');
    await sold.close();
  });

  it('uses no colour at all in plain ink', async () => {
    const bytes = await makePdf(richBook(), { ...LETTER, plainInk: true });
    for (const [r, g, b] of coloursIn(bytes)) {
      expect(r).toBe(g);
      expect(g).toBe(b);
    }
  });
});

/** Every colour set in the pages, read from their own operators. */
function coloursIn(bytes: Uint8Array): string[][] {
  const colours = contentOf(bytes).matchAll(/([\d.]+) ([\d.]+) ([\d.]+) (?:rg|RG|scn|SCN)\b/gu);
  return [...colours].map(([, r = '', g = '', b = '']) => [r, g, b]);
}

function contentOf(bytes: Uint8Array): string {
  const file = Buffer.from(bytes).toString('latin1');
  return [...file.matchAll(/\/FlateDecode\s*>>\s*stream\n([\s\S]*?)\nendstream/gu)]
    .map(([, data = '']) => inflated(data))
    .join('\n');
}

function inflated(data: string): string {
  try {
    return inflateSync(Buffer.from(data, 'latin1')).toString('latin1');
  } catch {
    return '';
  }
}

function spelled(words: Words): string {
  return words
    .map((part) => (typeof part === 'string' ? part : 'strong' in part ? part.strong : tracedText(part.field)))
    .join('');
}
