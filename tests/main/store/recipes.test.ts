import fc from 'fast-check';
import { beforeEach, describe, expect, it } from 'vitest';
import type { Store } from '../../../src/main/store/store.ts';
import { storeIn } from '../helpers/folder.ts';
import { sampleRecipe } from '../helpers/samples.ts';

describe('looking for a recipe', () => {
  let store: Store;
  const found = (words: string, tag?: string) => store.recipes.find({ words, tag }).map((recipe) => recipe.id);

  beforeEach(() => {
    store = storeIn();
    const keep = (id: string, name: string, summary: string, tags: string[]) =>
      store.recipes.save(sampleRecipe({ id, name, summary, tags }), false);
    keep('geese', 'Geese Going Home', 'Flying geese in four rows.', ['geese', 'medallion']);
    keep('four', 'Cobble', 'A four-patch with plain squares.', ['four-patch', 'beginner']);
    keep('ile', 'Île', 'An island in the middle.', ['beginner']);
    keep('square', 'Lamplight', 'A square in a square; no geese at all.', ['square in a square']);
  });

  it('finds by the beginning of any word, in name, tags and summary', () => {
    expect(found('lam')).toEqual(['square']);
    expect(found('medal')).toEqual(['geese']);
    expect(found('isl')).toEqual(['ile']);
    expect(found('amp')).toEqual([]);
  });

  it('wants every word that was typed, in any order', () => {
    expect(found('home geese')).toEqual(['geese']);
    expect(found('geese cobble')).toEqual([]);
  });

  it('puts a name before a summary', () => {
    expect(found('geese')).toEqual(['geese', 'square']);
    expect(store.recipes.count({ words: 'geese' })).toBe(2);
  });

  it('reads past accents, capitals, hyphens and marks of the query language', () => {
    expect(found('ile')).toEqual(['ile']);
    expect(found('FOUR-PATCH')).toEqual(['four']);
    expect(found('"four" AND (')).toEqual([]);
    expect(found('"cob* NOT')).toEqual([]);
    expect(found('cob*" - (')).toEqual(['four']);
    expect(found('name:cob')).toEqual([]);
    expect(found('cob\0')).toEqual(['four']);
  });

  it('gives every recipe by name when nothing is looked for', () => {
    expect(found('')).toEqual(['four', 'geese', 'square', 'ile']);
    expect(found(' - ')).toEqual(['four', 'geese', 'square', 'ile']);
  });

  it('keeps to a tag, whole and in any case', () => {
    expect(found('', 'Beginner')).toEqual(['four', 'ile']);
    expect(found('cob', 'beginner')).toEqual(['four']);
    expect(found('', 'begin')).toEqual([]);
  });

  it('gives a long list in parts that neither overlap nor leave out', () => {
    expect(store.recipes.count({ words: '', atMost: 2 })).toBe(4);
    const parts = [0, 2, 4].map((from) => store.recipes.find({ words: '', from, atMost: 2 }).map(({ id }) => id));
    expect(parts).toEqual([['four', 'geese'], ['square', 'ile'], []]);
  });

  it('follows a change of name and tags, and a removal', () => {
    const renamed = sampleRecipe({ id: 'four', name: 'Shingle', summary: '', tags: ['stones'] });
    expect(store.recipes.save(renamed, false)).toBe(2);
    expect(found('cobble')).toEqual([]);
    expect(found('', 'beginner')).toEqual(['ile']);
    expect(found('shingle stones')).toEqual(['four']);
    store.recipes.remove('four');
    expect(found('shingle')).toEqual([]);
    expect(found('', 'stones')).toEqual([]);
  });
});

describe('whatever is typed', () => {
  it('is never taken for a query that cannot be read', () => {
    const store = storeIn();
    store.recipes.save(sampleRecipe(), false);
    const typed = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 40 }),
      fc.stringMatching(/^[a-z"'*():^+\-{}~ \0]{0,30}$/),
      fc.constantFrom('NEAR(a b)', 'a AND', 'OR', 'NOT a', '"', '""', '*', '^a', 'name : a', '{name tags} : a', "';--"),
    );
    fc.assert(fc.property(typed, (words) => Array.isArray(store.recipes.find({ words }))));
  });

  it('finds a recipe by its own name, by the beginnings of its words, in any case', () => {
    const store = storeIn();
    // Without ß, whose capital is two letters.
    const word = fc.stringMatching(/^[a-zäéîøœ0-9]{2,9}$/);
    fc.assert(
      fc.property(fc.array(word, { minLength: 1, maxLength: 4 }), (words) => {
        store.recipes.save(sampleRecipe({ name: words.join(' ') }), false);
        const typed = words.map((each) => each.slice(0, Math.ceil(each.length / 2)).toUpperCase()).join(' ');
        return store.recipes.find({ words: typed }).length === 1;
      }),
    );
  });
});
