import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { makeReader } from '../../../src/main/reader.ts';
import { starterFiles } from '../../../src/main/store/starters.ts';
import { freshFolder, storeIn } from '../helpers/folder.ts';
import { samplePattern, sampleRecipe } from '../helpers/samples.ts';

const reader = makeReader([]);

function files(recipe = sampleRecipe(), demo = samplePattern()) {
  return {
    recipes: [{ name: 'mooring.recipe.json', text: JSON.stringify(recipe) }],
    demo: [{ name: 'slack-water.pattern.json', text: JSON.stringify(demo) }],
  };
}

describe('a first start', () => {
  it('puts in the starter recipes and the demo', () => {
    const store = storeIn();
    expect(store.starters.putIn(files(), reader)).toEqual([]);
    expect(store.recipes.read('mooring')?.starter).toBe(true);
    expect(store.starters.demo()).toBe('slack-water');
    expect(store.patterns.cards()).toHaveLength(1);
  });

  it('finds the files in the program’s own folder, and none where it is not there', () => {
    const resources = freshFolder();
    expect(starterFiles(resources)).toEqual({ recipes: [], demo: [] });
    for (const folder of ['recipes', 'demo']) mkdirSync(join(resources, folder));
    writeFileSync(join(resources, 'recipes', 'b.recipe.json'), 'b');
    writeFileSync(join(resources, 'recipes', 'a.recipe.json'), 'a');
    writeFileSync(join(resources, 'recipes', 'README.md'), 'not a recipe');
    writeFileSync(join(resources, 'demo', 'd.pattern.json'), 'd');
    expect(starterFiles(resources)).toEqual({
      recipes: [
        { name: 'a.recipe.json', text: 'a' },
        { name: 'b.recipe.json', text: 'b' },
      ],
      demo: [{ name: 'd.pattern.json', text: 'd' }],
    });
  });

  it('says which file cannot be read, puts in the rest, and tries that file again next time', () => {
    const store = storeIn();
    const { demo } = files();
    const broken = { recipes: [{ name: 'mooring.recipe.json', text: '{' }], demo };
    expect(store.starters.putIn(broken, reader)[0]?.what).toContain('mooring.recipe.json');
    expect(store.starters.demo()).toBe('slack-water');
    expect(store.starters.putIn(files(), reader)).toEqual([]);
    expect(store.recipes.has('mooring')).toBe(true);
  });
});

describe('a later start', () => {
  it('leaves out what the designer has removed', () => {
    const folder = freshFolder();
    const store = storeIn(folder);
    store.starters.putIn(files(), reader);
    store.recipes.remove('mooring');
    store.patterns.remove('slack-water');
    const again = storeIn(folder);
    again.starters.putIn(files(sampleRecipe({ name: 'Mooring, mended' })), reader);
    expect(again.recipes.find({ words: '' })).toEqual([]);
    expect(again.patterns.cards()).toEqual([]);
    expect(again.starters.demo()).toBeNull();
  });

  it('brings a changed starter recipe, but never over the designer’s own', () => {
    const store = storeIn();
    store.starters.putIn(files(), reader);
    store.starters.putIn(files(sampleRecipe({ name: 'Mended' })), reader);
    expect(store.recipes.read('mooring')?.body).toContain('Mended');
    store.recipes.save(sampleRecipe({ name: 'Hers' }), false);
    store.starters.putIn(files(sampleRecipe({ name: 'Mended again' })), reader);
    expect(store.recipes.read('mooring')).toMatchObject({ starter: false, body: expect.stringContaining('Hers') });
  });

  it('leaves the demo as the designer has changed it', () => {
    const store = storeIn();
    store.starters.putIn(files(), reader);
    store.patterns.save(samplePattern({ title: 'Hers' }), 1);
    store.starters.putIn(files(sampleRecipe(), samplePattern({ title: 'Mended' })), reader);
    expect(store.patterns.cards().map((card) => card.title)).toEqual(['Hers']);
  });

  it('puts in a demo that a newer program brings beside it', () => {
    const store = storeIn();
    store.starters.putIn(files(), reader);
    store.starters.putIn(files(sampleRecipe(), samplePattern({ id: 'neap', title: 'Neap' })), reader);
    expect(store.patterns.cards().map((card) => card.id)).toEqual(['neap', 'slack-water']);
  });
});
