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

/** "From each of 6 dark strips cut 1 L (16½″) and 10 C (2½″)." as letters and how many of all of these strips. */
function fromBundle(book: ReturnType<typeof bookOf>, size: number): readonly (readonly [string, number])[] {
  const lists = section(book, 'cutting').flatMap((block) => (block.kind === 'list' ? [block.items] : []));
  return (lists[size] ?? []).map(said).flatMap((line) => {
    const [, strips = '0'] = /^From (?:each of )?(\d+) /u.exec(line) ?? [];
    return [...line.matchAll(/(\d+) ([A-Z]+) \(/gu)].map(([, n = '0', letter = '']) => {
      return [letter, Number(strips) * Number(n)] as const;
    });
  });
}

describe.each(patterns)('the strips of %s', (_, pattern) => {
  test('give every piece of the cutting chart, letter by letter', () => {
    const book = bookOf(pattern);
    workOut(pattern).sizes.forEach(({ cloth }, i) => {
      const given = new Map<string, number>();
      const lines = stripLines(book, i).filter((text) => text.includes(': '));
      for (const [letter, many] of [...lines.flatMap(lettersIn), ...fromBundle(book, i)]) {
        given.set(letter, (given.get(letter) ?? 0) + many);
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
