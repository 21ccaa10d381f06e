import { describe, expect, test } from 'vitest';
import { inchesText } from '../../src/shared/measure/fraction.ts';
import { tracedText } from '../../src/shared/measure/traced.ts';
import { setBackingWay, setBindingCut } from '../../src/shared/pattern/edits/index.ts';
import type { Pattern } from '../../src/shared/pattern/schema.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { plainText } from '../../src/shared/writing/words.ts';
import { writeBook } from '../../src/shared/writing/writeBook.ts';
import { demoPattern } from '../helpers/starters.ts';

/** The chart and the steps of the finishing pages as plain text. */
function finishing(pattern: Pattern) {
  const worked = workOut(pattern);
  const section = writeBook(worked).sections.find(({ id }) => id === 'finishing');
  const blocks = section?.blocks ?? [];
  const rows = blocks.flatMap((block) => (block.kind === 'chart' ? block.chart.rows : []));
  const steps = blocks.flatMap((block) => (block.kind === 'steps' ? block.steps : []));
  return {
    worked,
    rows: rows.map(({ cells }) => cells.map((words) => plainText(words, tracedText)).join(' | ')),
    steps: steps.map(({ words }) => words.map((one) => plainText(one, tracedText)).join(' ')),
    figures: steps.flatMap(({ figures }) => figures.map(({ figure }) => figure.alt)),
  };
}

describe('finishing as it is printed', () => {
  test('straight binding is joined from strips, and nothing is said of the bias', () => {
    const { rows, steps } = finishing(demoPattern());
    expect(rows.some((row) => row.startsWith('Binding strips | '))).toBe(true);
    expect([...rows, ...steps].filter((text) => text.includes('bias'))).toEqual([]);
  });

  test('bias binding tells what it is cut from and shows the cuts', () => {
    const { worked, rows, steps, figures } = finishing(setBindingCut.apply(demoPattern(), { cut: 'bias' }));
    const squares = worked.sizes.map(({ cloth }) => `${inchesText(cloth.binding.from?.height.value ?? 0)} square`);
    expect(rows).toContain(['Binding cut from', ...squares].join(' | '));
    expect(steps.join(' ')).toContain('at 45° to the edges');
    expect(figures.some((alt) => alt.includes('45 degrees'))).toBe(true);
  });

  test('a continuous bias strip is told in two steps, square and tube', () => {
    const { steps, figures } = finishing(setBindingCut.apply(demoPattern(), { cut: 'continuous' }));
    expect(steps.filter((text) => text.includes('diagonal') || text.includes('tube'))).toHaveLength(2);
    expect(figures.filter((alt) => alt.startsWith('A square of') || alt.startsWith('The two triangles'))).toHaveLength(
      2,
    );
  });

  test('wide backing cloth is asked for by its width', () => {
    const pattern = setBackingWay.apply(demoPattern(), { run: 'down', wide: 108 });
    const { worked, rows } = finishing(pattern);
    expect(rows.find((row) => row.startsWith('Backing panels'))).toContain('× 108″ wide cloth');
    const book = JSON.stringify(writeBook(worked).sections.find(({ id }) => id === 'before-you-buy'));
    expect(book).toContain('; wide cloth, ');
  });
});
