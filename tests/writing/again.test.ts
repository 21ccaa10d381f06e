import { describe, expect, test } from 'vitest';
import { testPattern } from '../helpers/fixtures.ts';
import { bookOf, said, section, textOf } from './said.ts';

/** The headings, sentences and step numbers of the units, as a reader meets them. */
const book = bookOf(testPattern('harbour-wall'));
const steps = section(book, 'units').flatMap((block) =>
  block.kind === 'steps' ? block.steps.map((step, i) => ({ ...step, number: block.firstNumber + i })) : [],
);

describe('a unit sewn like an earlier one', () => {
  test('points back to steps that are there, and tells only what is different', () => {
    const back = steps.flatMap(({ words, number }) => {
      const [, from, to] = /^Sew these as steps (\d+) to (\d+) show\.$/u.exec(said(words[0] ?? [])) ?? [];
      return from === undefined ? [] : [{ number, from: Number(from), to: Number(to) }];
    });
    expect(back.length).toBeGreaterThan(0);
    for (const { number, from, to } of back) {
      expect(to).toBeLessThan(number);
      const meant = steps.filter((step) => step.number >= from && step.number <= to);
      expect(meant).toHaveLength(to - from + 1);
      // Never to a step that itself only points back.
      for (const { words } of meant) expect(said(words[0] ?? [])).not.toMatch(/^Sew these as/u);
    }
  });

  test('still says how many to make, as often as there are units', () => {
    const headings = section(book, 'units').filter(({ kind }) => kind === 'heading');
    expect(textOf(book, 'units').match(/^Make Medallion/gmu)).not.toBeNull();
    expect(steps.filter(({ perSize }) => perSize?.label === 'Make')).toHaveLength(headings.length);
  });

  test('shows the unit in its own fabrics', () => {
    for (const { figures } of steps) expect(figures.length).toBeGreaterThan(0);
  });
});
