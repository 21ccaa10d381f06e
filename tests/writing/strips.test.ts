import { describe, expect, test } from 'vitest';
import { same } from '../../src/shared/measure/inches.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { testPattern, testPatternNames } from '../helpers/fixtures.ts';
import { demoPattern } from '../helpers/starters.ts';
import { bookOf, said, section } from './said.ts';

const patterns = [
  ['the demo', demoPattern()] as const,
  ...testPatternNames().map((name) => [name, testPattern(name)] as const),
];

/** The strips chart, a column for each size: its lines for every fabric. */
function stripLines(book: ReturnType<typeof bookOf>, size: number): readonly string[] {
  const charts = section(book, 'cutting').flatMap((block) => (block.kind === 'chart' ? [block.chart] : []));
  const rows = charts.find(({ id }) => id === 'strips')?.rows ?? [];
  return rows.filter(({ group }) => group === undefined).map(({ cells }) => said(cells[size] ?? []));
}

/** "4 × 6¼″: 18 C, 22 J*" as letters and how many. */
function lettersIn(line: string): readonly (readonly [string, number])[] {
  return (line.split(': ')[1] ?? '').split(', ').map((part) => {
    const [, many = '1', letter = ''] = /^(?:(\d+) )?([A-Z]+)\*?$/u.exec(part) ?? [];
    return [letter, Number(many)];
  });
}

describe.each(patterns)('the strips of %s', (_, pattern) => {
  test('give every piece of the cutting chart, letter by letter', () => {
    const book = bookOf(pattern);
    workOut(pattern).sizes.forEach(({ cloth }, i) => {
      const given = new Map<string, number>();
      for (const line of stripLines(book, i).filter((text) => text.includes(': '))) {
        for (const [letter, many] of lettersIn(line)) given.set(letter, (given.get(letter) ?? 0) + many);
      }
      // Joined borders and binding are whole strips without a count; what is counted has to agree.
      for (const { letter, count, cutAs } of cloth.pieces.filter(({ cutAs }) => cutAs === 'piece')) {
        expect([letter, cutAs, given.get(letter)]).toEqual([letter, cutAs, count.value]);
      }
    });
  });

  test('are as many as are planned', () => {
    const book = bookOf(pattern);
    workOut(pattern).sizes.forEach(({ cloth }, i) => {
      const cut = stripLines(book, i).reduce((sum, line) => sum + Number(/^(\d+) × .*: /u.exec(line)?.[1] ?? 0), 0);
      expect(cut).toBe(cloth.needs.reduce((sum, { plan }) => sum + plan.stripCount, 0));
    });
  });

  test('say how long the ends of joined borders are', () => {
    const book = bookOf(pattern);
    workOut(pattern).sizes.forEach(({ cloth }, i) => {
      const text = stripLines(book, i).join('\n');
      for (const { letter } of cloth.pieces.filter(({ joined }) => joined !== undefined)) {
        const laid = cloth.needs.flatMap(({ plan }) => plan.strips.flatMap(({ pieces }) => pieces));
        const ends = laid.filter((one) => one.letter === letter && !same(one.width, pattern.house.usableWidth));
        for (const _end of ends) expect(text).toContain(`″ of ${letter}`);
      }
    });
  });
});
