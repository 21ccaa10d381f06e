import { describe, expect, it } from 'vitest';
import { makePdf } from '../../../src/main/paper/makePdf.ts';
import { workOut } from '../../../src/shared/workroom/workOut.ts';
import { writeBook } from '../../../src/shared/writing/writeBook.ts';
import { demoPattern } from '../../helpers/starters.ts';
import { openPdf } from './readPdf.ts';

describe('the demo pattern on paper', () => {
  it.each([
    ['letter', false],
    ['letter', true],
    ['a4', false],
    ['a4', true],
  ] as const)('is a whole book on %s, plain ink %s', async (paper, plainInk) => {
    const book = writeBook(workOut(demoPattern()));
    const pdf = await openPdf(await makePdf(book, { paper, plainInk, draft: false }));
    const titles = book.sections.map((section) => section.title).slice(1);
    expect(pdf.bookmarks.filter((title) => !title.startsWith(' '))).toEqual(['Cover', ...titles]);
    // Each page but the cover begins within the frame and carries something besides its foot.
    for (const page of pdf.pages.slice(1)) expect(page.runs.length).toBeGreaterThan(3);
    await pdf.close();
  });
});
