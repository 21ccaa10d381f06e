import { beforeEach, describe, expect, it } from 'vitest';
import type { Store } from '../../../src/main/store/store.ts';
import type { Recipe } from '../../../src/shared/recipe/schema.ts';
import { storeIn } from '../helpers/folder.ts';
import { sampleRecipe } from '../helpers/samples.ts';

let store: Store;
beforeEach(() => {
  store = storeIn();
});

const save = (changes: Partial<Recipe> = {}) => store.recipes.save(sampleRecipe(changes), false);
const kept = (id = 'mooring') => store.recipes.revisions(id).map(({ revision }) => revision);

describe('the revisions of a recipe', () => {
  it('are every body it was saved with, the newest first', () => {
    expect([save(), save({ name: 'Buoy' }), save({ name: 'Bell buoy' })]).toEqual([1, 2, 3]);
    const names = store.recipes.revisions('mooring').map(({ body }) => JSON.parse(body).name);
    expect(names).toEqual(['Bell buoy', 'Buoy', 'Mooring']);
    expect(store.recipes.read('mooring')).toMatchObject({ revision: 3 });
  });

  it('say when each was saved', () => {
    save();
    save({ name: 'Buoy' });
    const [second, first] = store.recipes.revisions('mooring').map(({ changed }) => Date.parse(changed));
    expect(second).toBeGreaterThan(first ?? Number.NaN);
  });

  it('are not added to by a save that changes nothing', () => {
    expect([save(), save(), save()]).toEqual([1, 1, 1]);
    expect(kept()).toEqual([1]);
  });

  it('take an old body up again as a revision of its own', () => {
    save();
    save({ name: 'Buoy' });
    expect(save()).toBe(3);
    expect(kept()).toEqual([3, 2, 1]);
  });

  it('outlive the recipe, and go on when it comes back', () => {
    save();
    save({ name: 'Buoy' });
    store.recipes.remove('mooring');
    expect(kept()).toEqual([2, 1]);
    expect(save({ name: 'Buoy' })).toBe(2);
    expect(save({ name: 'Bell buoy' })).toBe(3);
  });

  it('are those of that recipe alone, and none for one that was never kept', () => {
    save();
    save({ id: 'hawser' });
    expect(kept('hawser')).toEqual([1]);
    expect(kept('nowhere')).toEqual([]);
  });
});

describe('keeping many recipes at once', () => {
  it('keeps all of them or none', () => {
    const broken = { ...sampleRecipe({ id: 'hawser' }), name: null } as unknown as Recipe;
    expect(() => store.recipes.saveAll([sampleRecipe(), broken])).toThrow();
    expect(store.recipes.find({ words: '' })).toEqual([]);
    expect(kept()).toEqual([]);
    store.recipes.saveAll([sampleRecipe(), sampleRecipe({ id: 'hawser' })]);
    expect(store.recipes.find({ words: '' })).toHaveLength(2);
  });
});
