import { expect, test } from 'vitest';
import type { Pattern } from '../../src/shared/pattern/schema.ts';
import { testPattern } from '../helpers/fixtures.ts';
import { demoPattern } from '../helpers/starters.ts';
import { bookOf, section, textOf } from './said.ts';

/** The demo with its sizes changed. */
function sized(change: (size: Pattern['sizes'][number], i: number) => Partial<Pattern['sizes'][number]>): Pattern {
  const demo = demoPattern();
  return { ...demo, sizes: demo.sizes.map((size, i) => ({ ...size, ...change(size, i) })) };
}

test('a number that is not said for every size has the name of its size behind it', () => {
  // The first size has no rope border: two numbers alone would be read as the first two sizes’.
  const book = bookOf(sized((_, i) => (i === 0 ? { borders: { rope: 0, quay: 0 } } : {})));
  const text = textOf(book, 'borders');
  expect(text).toContain('cut 70½″ (Lap) · 84½″ (Bed), to the sides');
  expect(text).toContain('Cot goes without this border.');
});

test('a number that is said for every size stands in the order of the sizes', () => {
  expect(textOf(bookOf(demoPattern()), 'borders')).toContain('cut 45½″ · 70½″ · 84½″, to the sides');
});

test('square blocks say so once', () => {
  expect(textOf(bookOf(demoPattern()), 'blocks')).toContain('Block A measures 9½″ · 10½″ · 12½″ square, unfinished.');
});

test('a size of one block is not sewn in rows', () => {
  const book = bookOf(sized((_, i) => (i === 0 ? { across: 1, down: 1 } : {})));
  const text = textOf(book, 'quilt');
  expect(text).toContain('Cot is a single block.');
  expect(text).not.toContain('Rows Cot');
  const shown = section(book, 'quilt').flatMap((block) => (block.kind === 'steps' ? block.steps[0]?.figures : []));
  expect(shown[0]?.caption).toEqual(['Lap']);
});

test('a pattern of single blocks has nothing to set', () => {
  expect(section(bookOf(sized(() => ({ across: 1, down: 1 }))), 'quilt')).toEqual([]);
});

test('one block across is sewn one below another', () => {
  const text = textOf(bookOf(sized(() => ({ across: 1 }))), 'quilt');
  expect(text).toContain('one below another');
  expect(text).not.toContain('row the other way');
});

test('how many seams nest is said for every size', () => {
  const text = textOf(bookOf(demoPattern()), 'quilt');
  expect(text).toMatch(/nest in \d+ · \d+ · \d+ places and lie to the same side in \d+ · \d+ · \d+\./u);
});

test('a backing in one piece has no panels to sew', () => {
  const small = textOf(bookOf(sized(() => ({ across: 1, down: 1 }))), 'finishing');
  expect(small).toContain('The backing is one piece.');
  const mixed = textOf(bookOf(testPattern('shingle')), 'finishing');
  expect(mixed).toContain('Where the chart gives more than one backing panel');
  expect(mixed).toContain('1 of 45″ × WOF | 2 of 87″ × WOF, seams down');
});

test('words are only explained when they are used', () => {
  expect(textOf(bookOf(demoPattern()), 'before-you-begin')).toContain('Sub-cut');
  expect(textOf(bookOf(testPattern('shingle')), 'before-you-begin')).not.toContain('Sub-cut');
});

test('a pattern in one size does not name it at every count', () => {
  const text = textOf(bookOf(testPattern('six-lamps')), 'units');
  expect(text).toContain('Make  24');
  expect(text).not.toContain('Lap');
});

test('strip sets are counted where they are sewn', () => {
  expect(textOf(bookOf(demoPattern()), 'units')).toContain('Strip sets Cot 5\nStrip sets Lap 13\nStrip sets Bed 20');
});

test('words typed with tabs and breaks are set as running text', () => {
  const demo = demoPattern();
  const typed = { introduction: 'Lamps\tand\u2028boats.\r\n\r\nA second\nparagraph.', cautions: ['Mind\tthe\ntide.'] };
  const book = bookOf({ ...demo, words: { ...demo.words, ...typed } });
  expect(textOf(book, 'before-you-buy')).toContain('Lamps and boats.\nA second paragraph.');
  expect(textOf(book, 'before-you-begin')).toContain('Mind the tide.');
});
