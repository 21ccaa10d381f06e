import { beforeEach, describe, expect, it } from 'vitest';
import type { Imported } from '../../../src/shared/contract.ts';
import { readRecipesText } from '../../../src/shared/pattern/load.ts';
import { recipesText } from '../../../src/shared/pattern/save.ts';
import { RECIPES_FORMAT, type Recipe } from '../../../src/shared/recipe/schema.ts';
import { sampleRecipe } from '../helpers/samples.ts';
import { refusalFrom, type Served, serviceOn } from '../helpers/service.ts';

let served: Served;
beforeEach(() => {
  served = serviceOn();
});

const holding = (id: string, held: string, name = id): Recipe =>
  sampleRecipe({
    id,
    name,
    body: { kind: 'grid', columns: [1, 1], rows: [1, 1], key: { A: { recipe: held } }, layout: ['A A:90', 'A A'] },
  });
const bring = (recipes: readonly unknown[], name = 'theirs.recipes.json') =>
  served.service.importFile({ name, text: recipesText(recipes as Recipe[]) });
const names = async () => (await served.service.recipes({ words: '' })).map(({ id, name }) => `${id}: ${name}`);

describe('a file of many recipes', () => {
  it('is kept whole, what it holds with it', async () => {
    const imported = await bring([holding('pier', 'mooring', 'Pier'), sampleRecipe()]);
    expect(imported).toEqual({ kind: 'recipes', ids: ['pier', 'mooring'], already: 0 } satisfies Imported);
    expect(await names()).toEqual(['mooring: Mooring', 'pier: Pier']);
  });

  it('may be a bare list, and may hold recipes of the library', async () => {
    await served.service.saveRecipe(sampleRecipe());
    const text = JSON.stringify([holding('pier', 'mooring', 'Pier')]);
    expect(await served.service.importFile({ name: 'list.json', text })).toMatchObject({ ids: ['pier'] });
  });

  it('leaves what is here already, word for word', async () => {
    const both = [holding('pier', 'mooring', 'Pier'), sampleRecipe()];
    await bring(both);
    expect(await bring(both)).toEqual({ kind: 'recipes', ids: [], already: 2 });
    expect(await names()).toHaveLength(2);
  });

  it('never takes the place of one that is kept; what holds a recipe of the file goes on holding that one', async () => {
    await served.service.saveRecipe(sampleRecipe({ name: 'Our mooring' }));
    await served.service.saveRecipe(holding('pier', 'mooring', 'Pier'));
    const imported = await bring([holding('pier', 'mooring', 'Pier'), sampleRecipe({ name: 'Their mooring' })]);
    expect(imported).toEqual({ kind: 'recipes', ids: ['pier-2', 'mooring-2'], already: 0 });
    const theirs = await served.service.openRecipe('pier-2');
    expect(theirs.body).toMatchObject({ key: { A: { recipe: 'mooring-2' } } });
    expect((await served.service.openRecipe('pier')).body).toMatchObject({ key: { A: { recipe: 'mooring' } } });
    expect((await served.service.openRecipe('mooring')).name).toBe('Our mooring');
  });

  it('gives no two of its recipes the same fresh id', async () => {
    await served.service.saveRecipe(sampleRecipe({ name: 'Our mooring' }));
    const imported = await bring([sampleRecipe(), sampleRecipe({ id: 'mooring-2', name: 'Second' })]);
    expect(imported).toMatchObject({ ids: ['mooring-2', 'mooring-2-2'] });
  });
});

describe('a file of many recipes that is wrong anywhere', () => {
  const { roles: _, ...bare } = sampleRecipe({ id: 'bare', name: 'Bare poles' });
  const gap = sampleRecipe({
    id: 'gap',
    name: 'Gap in the wall',
    body: {
      kind: 'grid',
      columns: [1, 1],
      rows: [1],
      key: { H: { unit: 'hst', roles: ['sea', 'sand'] } },
      layout: ['H'],
    },
  });

  it.each([
    ['has a recipe that is not as it should be', [sampleRecipe(), bare], 'Bare poles', 'recipes[1].roles'],
    ['has a recipe that cannot be drawn', [sampleRecipe(), gap], 'Gap in the wall', 'recipes[1].body.layout[0]'],
    ['has two recipes of one id', [sampleRecipe(), sampleRecipe({ name: 'Twin' })], 'Twin', 'recipes[1].id'],
    ['holds a recipe that is nowhere', [holding('pier', 'nowhere', 'Pier')], 'nowhere', 'recipes[0]'],
    [
      'holds itself, through another',
      [holding('ebb', 'flood', 'Ebb'), holding('flood', 'ebb')],
      'Ebb',
      'recipes[0].body',
    ],
  ])('is refused by its name when it %s, and nothing is kept', async (_name, recipes, named, path) => {
    const refusal = await refusalFrom(bring(recipes));
    expect(refusal.kind).toBe('bad-input');
    expect(refusal.words).toContain('theirs.recipes.json');
    expect(refusal.words).toContain(named);
    expect(refusal.findings?.[0]?.where.path).toContain(path);
    expect(await names()).toEqual([]);
  });

  it('is refused when it is empty, or of a newer format', async () => {
    expect((await refusalFrom(bring([]))).words).toContain('recipes');
    const newer = JSON.stringify({ format: 'piecewright-recipes', version: RECIPES_FORMAT + 1, recipes: [] });
    expect(await refusalFrom(served.service.importFile({ name: 'new.json', text: newer }))).toMatchObject({
      kind: 'newer-file',
      words: expect.stringContaining('new.json'),
    });
  });

  it('is refused as newer when one of its recipes is', async () => {
    const refusal = await refusalFrom(
      bring([sampleRecipe(), { ...sampleRecipe({ id: 'b', name: 'Buoy' }), version: 99 }]),
    );
    expect(refusal).toMatchObject({ kind: 'newer-file', words: expect.stringContaining('Buoy') });
  });
});

describe('recipes given away', () => {
  it('are one recipe file, or one file of recipes with all they hold, that comes in again as it was', async () => {
    await bring([holding('pier', 'mooring', 'Pier'), sampleRecipe(), sampleRecipe({ id: 'hawser', name: 'Hawser' })]);
    const give = served.service.exportRecipes;
    expect(JSON.parse((await give(['mooring'])).text)).toEqual(sampleRecipe());
    expect((await give(['mooring'])).name).toBe('mooring.recipe.json');
    const pier = await give(['pier']);
    expect(pier.name).toBe('pier.recipes.json');
    const read = readRecipesText(pier.text);
    expect(read.ok && read.value.map(({ id }) => id)).toEqual(['pier', 'mooring']);
    const both = await give(['pier', 'hawser']);
    expect(both.name).toBe('library.recipes.json');
    const other = serviceOn().service;
    expect(await other.importFile(both)).toMatchObject({ kind: 'recipes', already: 0 });
    expect(await other.openRecipe('pier')).toEqual(await served.service.openRecipe('pier'));
  });

  it('are refused when one of them is gone', async () => {
    expect(await refusalFrom(served.service.exportRecipes(['nowhere']))).toMatchObject({ kind: 'not-found' });
  });
});

describe('revisions and facets, asked of the service', () => {
  it('gives every revision, and the newest of those that are kept', async () => {
    await served.service.saveRecipe(sampleRecipe());
    expect(await served.service.saveRecipe(sampleRecipe({ name: 'Buoy' }))).toEqual({ revision: 2 });
    const all = await served.service.recipeRevisions('mooring');
    expect(all.map(({ revision, recipe }) => [revision, recipe.name])).toEqual([
      [2, 'Buoy'],
      [1, 'Mooring'],
    ]);
    const kept = await served.service.keptRecipes(['mooring', 'nowhere', 'mooring']);
    expect(kept.map(({ revision, recipe }) => [recipe.id, revision])).toEqual([['mooring', 2]]);
  });

  it('finds by facets as soon as a recipe is kept, and by those of the recipes it holds', async () => {
    await served.service.saveRecipe(sampleRecipe());
    await served.service.saveRecipe(holding('pier', 'mooring'));
    const found = async (...facets: string[]) =>
      (await served.service.recipes({ words: '', facets })).map(({ id }) => id);
    expect(await found('unit:hst', 'family:four-patch')).toEqual(['mooring', 'pier']);
    await served.service.saveRecipe(
      sampleRecipe({
        body: { kind: 'grid', columns: [3], rows: [3], key: { P: { unit: 'plain', role: 'sea' } }, layout: ['P'] },
      }),
    );
    expect(await found('unit:hst')).toEqual([]);
    expect(served.reported).toEqual([]);
  });

  it('leaves a recipe that cannot be sewn to its words', async () => {
    await served.service.saveRecipe(holding('pier', 'nowhere'));
    expect(await served.service.recipes({ words: '', facets: ['unit:hst'] })).toEqual([]);
    expect(await served.service.recipes({ words: 'pier' })).toHaveLength(1);
  });
});
