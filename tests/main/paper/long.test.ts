import { describe, expect, it } from 'vitest';
import { makePdf } from '../../../src/main/paper/makePdf.ts';
import { count, given } from '../../../src/shared/measure/traced.ts';
import type { Block, Chart, Words } from '../../../src/shared/writing/book.ts';
import { quilt } from './fixtures/figures.ts';
import { smallBook } from './fixtures/smallBook.ts';
import { all, openPdf, solid } from './readPdf.ts';

const LONG = 'Donaudampfschifffahrtsgesellschaftskapitänsmützenflickendecke';
const SENTENCE =
  'Sew the next strip to the last, right sides together, and press the seam toward the darker of the two. ';

async function opened(blocks: readonly Block[], title = 'Slack Water') {
  return openPdf(await makePdf(smallBook(blocks, { title }), { paper: 'letter', plainInk: false, draft: true }));
}

describe('what is too long', () => {
  it('a paragraph taller than a page runs on, whole', async () => {
    const pdf = await opened([{ kind: 'words', tone: 'body', text: [SENTENCE.repeat(120)] }]);
    expect(pdf.pages.length).toBeGreaterThan(2);
    const told = solid(
      pdf.pages
        .map(({ structure }) =>
          all(structure, 'P')
            .map((part) => part.text)
            .join(''),
        )
        .join(''),
    );
    expect(told).toBe(solid(SENTENCE.repeat(120)));
    await pdf.close();
  });

  it('a chart row taller than a page runs on, with the head above it again', async () => {
    const chart: Chart = {
      id: 'tall',
      columns: [
        { title: 'Piece', align: 'left', share: 1 },
        { title: 'Why', align: 'left', share: 3 },
      ],
      rows: [
        { cells: [['A'], ['short']] },
        { cells: [['B'], [SENTENCE.repeat(100)]] },
        { cells: [['C'], ['short again']] },
      ],
    };
    const pdf = await opened([{ kind: 'chart', chart }]);
    expect(pdf.pages.length).toBeGreaterThan(1);
    for (const page of pdf.pages) expect(page.text).toContain('Piece');
    expect(solid(pdf.pages.map((page) => page.text).join(''))).toContain('shortagain');
    await pdf.close();
  });

  it('a step with more words than a page keeps its figure', async () => {
    const steps = [
      {
        words: [[SENTENCE.repeat(60)], [SENTENCE.repeat(60)]],
        figures: Array.from({ length: 5 }, () => ({ figure: quilt(2, 2) })),
      },
    ];
    const pdf = await opened([{ kind: 'steps', firstNumber: 1, steps }]);
    const figures = pdf.pages.flatMap(({ structure }) => all(structure, 'Figure'));
    expect(figures).toHaveLength(5);
    expect(pdf.pages[0]?.runs.map((run) => run.text)).toContain('1');
    await pdf.close();
  });

  it('words without a space are broken rather than printed over the edge', async () => {
    const sizes = Array.from({ length: 8 }, (_, i) => `${LONG}${i}`);
    const chart: Chart = {
      id: 'names',
      columns: [
        { title: 'Piece', align: 'left', share: 1 },
        ...sizes.map((title) => ({ title, align: 'right' as const, share: 1 })),
      ],
      rows: [{ cells: [[LONG], ...sizes.map((): Words => [{ field: given(1048.984375, 'side'), show: 'length' }])] }],
    };
    const perSize = { label: 'Make', values: sizes.map((size) => ({ size, value: count(1000, 'units') })) };
    const title = Array.from({ length: 12 }, () => LONG).join(' ');
    const pdf = await opened(
      [
        { kind: 'heading', text: LONG.repeat(3) },
        { kind: 'chart', chart },
        {
          kind: 'steps',
          firstNumber: 1000,
          steps: [
            { words: [[LONG.repeat(4)]], figures: [{ figure: quilt(2, 3), caption: [LONG.repeat(2)] }], perSize },
          ],
        },
        { kind: 'caution', title: LONG.repeat(3), items: [[LONG.repeat(4)]] },
        { kind: 'list', items: [[LONG.repeat(4)]] },
        {
          kind: 'cover',
          figure: quilt(2, 3),
          skills: sizes,
          sizes: sizes.map((name) => ({ name, width: given(1048.984375, 'wide'), height: given(999.5, 'high') })),
        },
      ],
      title,
    );
    for (const page of pdf.pages) {
      for (const run of page.runs) {
        expect(run.x, run.text).toBeGreaterThanOrEqual(18);
        expect(run.x + run.width, run.text).toBeLessThanOrEqual(page.width - 47);
        expect(run.y, run.text).toBeLessThanOrEqual(page.height - 18);
      }
    }
    await pdf.close();
  });

  it('more cautions than a page holds run on, whole', async () => {
    const items = Array.from({ length: 20 }, (_, i): Words => [`Point ${i + 1}. ${'Mind the tide. '.repeat(60)}`]);
    const pdf = await opened([{ kind: 'caution', title: 'Take care', items }], 'Cautions');
    expect(pdf.pages.length).toBeGreaterThan(2);
    const text = pdf.pages.map(({ runs }) => runs.map((run) => run.text).join('')).join('');
    for (let i = 1; i <= 20; i += 1) expect(text).toContain(`Point ${i}.`);
    await pdf.close();
  });
});
