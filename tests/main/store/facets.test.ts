import { beforeEach, describe, expect, it } from 'vitest';
import type { Store } from '../../../src/main/store/store.ts';
import type { Recipe } from '../../../src/shared/recipe/schema.ts';
import { storeIn } from '../helpers/folder.ts';
import { sampleRecipe } from '../helpers/samples.ts';

let store: Store;
beforeEach(() => {
  store = storeIn();
});

/** Terms that say of what a recipe is made, as a stand-in for those of the workroom. */
const termsOf = ({ body }: { readonly body: string }): string[] => {
  const { tags, finished } = JSON.parse(body);
  return [...tags.map((tag: string) => `tag:${tag}`), `size:${finished}`];
};
const workOut = (rules = 1) => store.recipes.facets.workOut(rules, termsOf, () => false);
const found = (...facets: string[]) => store.recipes.find({ words: '', facets }).map(({ id }) => id);
const holding = (id: string, held: string): Recipe =>
  sampleRecipe({
    id,
    name: id,
    body: { kind: 'grid', columns: [1], rows: [1], key: { A: { recipe: held } }, layout: ['A'] },
  });

/** Ids of the recipes that were asked for. */
function asked(rules = 1): string[] {
  const ids: string[] = [];
  const derive = (kept: { readonly id: string; readonly body: string }) => {
    ids.push(kept.id);
    return termsOf(kept);
  };
  store.recipes.facets.workOut(rules, derive, () => false);
  return ids.sort();
}

describe('filtering recipes', () => {
  beforeEach(() => {
    store.recipes.save(sampleRecipe({ id: 'four', name: 'Cobble', tags: ['chains'], finished: 8 }), false);
    store.recipes.save(sampleRecipe({ id: 'nine', name: 'Shingle', tags: ['chains', 'stars'], finished: 9 }), false);
    workOut();
  });

  it('finds those that have every term', () => {
    expect(found('tag:chains')).toEqual(['four', 'nine']);
    expect(found('tag:chains', 'size:9')).toEqual(['nine']);
    expect(found('tag:stars', 'size:8')).toEqual([]);
    expect(found('tag:chains', 'tag:chains')).toEqual(['four', 'nine']);
    expect(found()).toEqual(['four', 'nine']);
  });

  it('goes together with words and tags', () => {
    const both = (words: string, tag?: string) =>
      store.recipes.find({ words, tag, facets: ['tag:chains'] }).map(({ id }) => id);
    expect(both('shin')).toEqual(['nine']);
    expect(both('', 'stars')).toEqual(['nine']);
    expect(both('lamp')).toEqual([]);
  });

  it('follows a change once it is worked out again', () => {
    store.recipes.save(sampleRecipe({ id: 'four', name: 'Cobble', tags: ['stars'], finished: 8 }), false);
    expect(asked()).toEqual(['four']);
    expect(found('tag:chains')).toEqual(['nine']);
    store.recipes.remove('nine');
    expect(found('tag:chains')).toEqual([]);
  });
});

describe('terms are worked out', () => {
  it('once, until the recipe or the rules change', () => {
    store.recipes.save(sampleRecipe(), false);
    expect(asked()).toEqual(['mooring']);
    expect(asked()).toEqual([]);
    expect(asked(2)).toEqual(['mooring']);
  });

  it('again when a recipe it holds changes, directly or through others, or is removed', () => {
    store.recipes.save(sampleRecipe(), false);
    store.recipes.save(holding('pier', 'mooring'), false);
    store.recipes.save(holding('port', 'pier'), false);
    store.recipes.save(sampleRecipe({ id: 'hawser' }), false);
    asked();
    store.recipes.save(sampleRecipe({ finished: 9 }), false);
    expect(asked()).toEqual(['mooring', 'pier', 'port']);
    store.recipes.remove('pier');
    expect(asked()).toEqual(['port']);
    store.recipes.save(holding('pier', 'mooring'), false);
    expect(asked()).toEqual(['pier', 'port']);
  });

  it('also for recipes that hold each other', () => {
    store.recipes.save(holding('ebb', 'flood'), false);
    store.recipes.save(holding('flood', 'ebb'), false);
    expect(asked()).toEqual(['ebb', 'flood']);
  });

  it('a few at a time when it is enough, and says how many are left', () => {
    for (const id of ['a', 'b', 'c']) store.recipes.save(sampleRecipe({ id }), false);
    const some = () => store.recipes.facets.workOut(1, termsOf, () => true);
    expect([some(), some(), some(), some()]).toEqual([2, 1, 0, 0]);
  });
});
