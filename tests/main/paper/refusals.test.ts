import { describe, expect, it } from 'vitest';
import { assertWhole, Drawn } from '../../../src/main/paper/guard.ts';
import { makePdf } from '../../../src/main/paper/makePdf.ts';
import { given } from '../../../src/shared/measure/traced.ts';
import type { Block } from '../../../src/shared/writing/book.ts';
import { halfSquare } from './fixtures/figures.ts';
import { richBook } from './fixtures/richBook.ts';
import { smallBook } from './fixtures/smallBook.ts';
import { openPdf } from './readPdf.ts';

const LETTER = { paper: 'letter', plainInk: false, draft: false } as const;

function words(...text: string[]): Block {
  return { kind: 'words', tone: 'body', text };
}

describe('what cannot be printed is refused in words', () => {
  it('a letter that no font of the page has', async () => {
    const made = makePdf(smallBook([words('Sew the 潮 block to the next one.')]), LETTER);
    await expect(made).rejects.toMatchObject({
      kind: 'bad-input',
      words: expect.stringContaining('“潮” in “Sew the 潮 block'),
    });
  });

  it('a figure of true size that is larger than the page', async () => {
    const block: Block = { kind: 'figures', sameScale: true, figures: [{ figure: halfSquare(9), scale: 1 }] };
    await expect(makePdf(smallBook([block]), LETTER)).rejects.toMatchObject({
      kind: 'bad-input',
      words: expect.stringContaining('9″ × 9″'),
    });
  });

  it('a test square wider than the page', async () => {
    const block: Block = { kind: 'test-square', side: given(8, 'side') };
    await expect(makePdf(smallBook([block]), LETTER)).rejects.toMatchObject({ kind: 'bad-input' });
  });

  it('but not letters that one of the two families has', async () => {
    const pdf = await openPdf(
      await makePdf(smallBook([words('Größe, Île, Žluť, “quoted”, ≈ 2 ■ and □ and e\u0301')]), LETTER),
    );
    expect(pdf.pages[0]?.text).toContain('Größe, Île, Žluť, “quoted”, ≈ 2 ■ and □ and é');
    await pdf.close();
  });
});

describe('stopping', () => {
  it('before it has begun', async () => {
    const made = makePdf(richBook(), { ...LETTER, signal: AbortSignal.abort() });
    await expect(made).rejects.toMatchObject({ kind: 'stopped' });
  });

  it('in the middle, from elsewhere in the program', async () => {
    const stop = new AbortController();
    const told: number[] = [];
    const made = makePdf(richBook({ fold: 6 }), {
      ...LETTER,
      signal: stop.signal,
      onProgress: (progress) => {
        told.push(progress);
        if (told.length === 3) setImmediate(() => stop.abort());
      },
    });
    await expect(made).rejects.toMatchObject({ kind: 'stopped' });
    expect(told.at(-1)).toBeLessThan(1);
  });

  it('never loses count on the way', async () => {
    const told: [number, string][] = [];
    await makePdf(smallBook([words('One.')]), {
      ...LETTER,
      onProgress: (progress, doing) => told.push([progress, doing]),
    });
    const progress = told.map(([much]) => much);
    expect(progress).toEqual([...progress].sort((a, b) => a - b));
    expect(told.at(-1)).toEqual([1, 'Finished']);
    expect(told.map(([, doing]) => doing)).toContain('Setting “Units”');
  });
});

describe('nothing is lost without a word', () => {
  it('a book of which nothing was drawn is told apart', () => {
    expect(() => assertWhole(richBook(), new Drawn())).toThrow('lacks a part of the book');
  });
});
