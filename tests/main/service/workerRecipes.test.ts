import { afterEach, expect, it } from 'vitest';
import { workerRecipes } from '../../../src/main/recipes/workerRecipes.ts';
import type { RecipeWork } from '../../../src/main/service/recipeWork.ts';
import { facetRules } from '../../../src/shared/workroom/recipeFacets.ts';
import { starterRecipes } from '../../helpers/starters.ts';
import { storeIn } from '../helpers/folder.ts';
import { sampleRecipe } from '../helpers/samples.ts';

const works: RecipeWork[] = [];
afterEach(async () => {
  for (const work of works.splice(0)) await work.close();
});

function begin(store = storeIn()) {
  const reported: unknown[] = [];
  const work = workerRecipes(store.folder, (error) => reported.push(error));
  works.push(work);
  return { store, work, reported };
}

it('terms are worked out on a thread of their own, while this one goes on', async () => {
  const { store, work, reported } = begin();
  store.recipes.saveAll(starterRecipes());
  const rules = facetRules();
  let beats = 0;
  const heart = setInterval(() => {
    beats += 1;
  }, 5);
  await work.ready();
  clearInterval(heart);
  expect(store.recipes.facets.left(rules)).toBe(0);
  expect(beats).toBeGreaterThan(3);
  // By its drawing: the churn dash lies on a grid of three by three.
  expect(store.recipes.find({ words: 'churn', facets: ['family:nine-patch'] }).map(({ id }) => id)).toEqual([
    'churn-dash',
  ]);
  expect(reported).toEqual([]);
});

it('a recipe that changes meanwhile is worked out again', async () => {
  const { store, work } = begin();
  store.recipes.saveAll(starterRecipes());
  const working = work.ready();
  for (let finished = 5; finished < 15; finished++) {
    store.recipes.save(sampleRecipe({ finished }), false);
    await new Promise((go) => setTimeout(go, 5));
  }
  await working;
  await work.ready();
  expect(store.recipes.facets.left(facetRules())).toBe(0);
});

it('what is brought in is checked there, with what it holds from the library', async () => {
  const { store, work } = begin();
  store.recipes.save(sampleRecipe(), false);
  const holding = (held: string) =>
    sampleRecipe({
      id: 'pier',
      name: 'Pier',
      body: { kind: 'grid', columns: [1], rows: [1], key: { A: { recipe: held } }, layout: ['A'] },
    });
  expect(await work.check([holding('mooring')], ['recipes[0]'])).toEqual([]);
  const [finding] = await work.check([holding('nowhere')], ['recipes[7]']);
  expect(finding).toMatchObject({ level: 'stops', where: { path: 'recipes[7]' } });
  expect(finding?.what).toContain('“nowhere”');
});

it('after it is closed it answers no more', async () => {
  const { work } = begin();
  await work.close();
  await expect(work.ready()).rejects.toThrow('closed');
});

it('a check says how far it is, and ends when it is stopped', async () => {
  const { work } = begin();
  const many = Array.from({ length: 600 }, (_, i) => sampleRecipe({ id: `net-${i}` }));
  const places = many.map((_, i) => `recipes[${i}]`);
  const stop = new AbortController();
  const told: number[] = [];
  const tell = (done: number) => {
    told.push(done);
    stop.abort(new Error('stopped'));
  };
  await expect(work.check(many, places, { tell, signal: stop.signal })).rejects.toThrow('stopped');
  expect(told).toHaveLength(1);
  expect(told[0]).toBeLessThan(600);
  expect(await work.check(many.slice(0, 2), places)).toEqual([]);
});

it('what a file is and holds is read there', async () => {
  const { work } = begin();
  expect(await work.read(JSON.stringify(sampleRecipe()))).toEqual({
    kind: 'recipe',
    recipes: { ok: true, value: [sampleRecipe()] },
  });
  expect(await work.read('{}')).toEqual({ kind: null });
  const broken = await work.read(JSON.stringify([{ ...sampleRecipe(), finished: 0 }]));
  expect(broken).toMatchObject({ kind: 'recipes', recipes: { ok: false } });
});
