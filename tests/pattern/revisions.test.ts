import { describe, expect, test } from 'vitest';
import { addBlock, takeRecipe } from '../../src/shared/pattern/edits/index.ts';
import { freshPattern } from '../../src/shared/pattern/fresh.ts';
import { isAlike, standingOf } from '../../src/shared/pattern/revisions.ts';
import type { Recipe } from '../../src/shared/recipe/schema.ts';
import { starter } from '../helpers/starters.ts';

const star = starter('sawtooth-star');
const about = { id: 'skerry', title: 'Skerry', designer: 'Saltmarsh & Thread', date: '2026-03-01' };
const pattern = freshPattern(star, [], { ...about, revisions: { [star.id]: 2 } });
const fourth: Recipe = {
  ...star,
  roles: [...star.roles, { id: 'lamp', name: 'Lamp', value: 'medium' }],
};

describe('a pattern and the library’s recipe', () => {
  test('are the same while they say the same, whatever the revision', () => {
    expect(standingOf(pattern, { ...star }, 7)).toBe('same');
  });

  test('differ by a newer revision when the library has moved on', () => {
    expect(standingOf(pattern, fourth, 3)).toBe('newer');
  });

  test('differ by the pattern’s own changes when it has not', () => {
    expect(standingOf(pattern, fourth, 2)).toBe('own');
  });

  test('are told apart by what they say when no revision is noted', () => {
    const { revisions: _, ...unnoted } = pattern;
    expect(standingOf(unnoted, star, 1)).toBe('same');
    expect(standingOf(unnoted, fourth, 1)).toBe('apart');
  });

  test('have nothing to do with each other when the pattern does not carry it', () => {
    expect(standingOf(pattern, starter('pinwheel'), 1)).toBeNull();
  });
});

test('likeness does not depend on the order in which a file names its entries, nor on what is left out', () => {
  expect(isAlike({ a: 1, b: [1, { c: 2 }] }, { b: [1, { c: 2, d: undefined }], a: 1 })).toBe(true);
  expect(isAlike({ a: 1 }, { a: 1, b: null })).toBe(false);
  expect(isAlike([1, 2], { 0: 1, 1: 2 })).toBe(false);
});

describe('taking another revision', () => {
  const taken = takeRecipe.apply(pattern, { recipe: fourth, revisions: { [star.id]: 3 } });

  test('notes the revision it was taken from', () => {
    expect(taken.revisions).toEqual({ 'sawtooth-star': 3 });
    expect(standingOf(taken, fourth, 3)).toBe('same');
  });

  test('keeps the fabrics of roles that stay, and gives a new role one of its value', () => {
    const [was] = pattern.blocks;
    const [now] = taken.blocks;
    expect(now?.fabrics).toEqual({ ...was?.fabrics, lamp: 'middle' });
  });

  test('says in its name what is taken', () => {
    expect(takeRecipe.name({ recipe: fourth, revisions: { [star.id]: 3 } }, pattern)).toBe(
      'Take revision 3 of Sawtooth star',
    );
  });

  test('forgets choices for roles and parameters that are gone, and keeps the others within bounds', () => {
    const log = starter('log-cabin');
    const of = freshPattern(log, [], about);
    const [block] = of.blocks;
    if (block === undefined) throw new Error('a fresh pattern has a block');
    const chosen = { ...of, blocks: [{ ...block, parameters: { rounds: 9, centre: 3 } }] };
    const [rounds] = log.parameters.filter(({ id }) => id === 'rounds');
    if (rounds === undefined) throw new Error('a log cabin has rounds');
    const smaller: Recipe = { ...log, parameters: [{ ...rounds, most: 4 }], roles: log.roles.slice(1) };
    const [after] = takeRecipe.apply(chosen, { recipe: smaller }).blocks;
    expect(after?.parameters).toEqual({ rounds: 4 });
    expect(Object.keys(after?.fabrics ?? {})).toEqual(['light', 'dark']);
  });

  test('carries the recipes it holds now', () => {
    const variable = starter('variable-star');
    const inner = starter('square-in-a-square');
    const holding: Recipe = { ...variable, id: star.id };
    const after = takeRecipe.apply(pattern, { recipe: holding, held: [inner], revisions: { [inner.id]: 5 } });
    expect(after.recipes.map(({ id }) => id)).toEqual(['sawtooth-star', 'square-in-a-square']);
    expect(after.revisions).toMatchObject({ 'square-in-a-square': 5 });
  });

  test('changes nothing when the pattern has it already, or has no such recipe', () => {
    expect(takeRecipe.apply(pattern, { recipe: { ...star } })).toBe(pattern);
    expect(takeRecipe.apply(pattern, { recipe: starter('pinwheel') })).toBe(pattern);
  });
});

test('a block added from the library notes its revision', () => {
  const after = addBlock.apply(pattern, { recipe: starter('pinwheel'), revisions: { pinwheel: 4, other: 1 } });
  expect(after.revisions).toEqual({ 'sawtooth-star': 2, pinwheel: 4 });
});
