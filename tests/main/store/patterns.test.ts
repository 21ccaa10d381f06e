import { describe, expect, it } from 'vitest';
import { freshFolder, storeIn } from '../helpers/folder.ts';
import { samplePattern, sampleRecipe } from '../helpers/samples.ts';

describe('the patterns of the library', () => {
  it('are as they were after the store is closed and opened again', () => {
    const folder = freshFolder();
    const first = storeIn(folder);
    expect(first.patterns.save(samplePattern(), null)).toEqual({ revision: 1 });
    const kept = storeIn(folder).patterns.read('slack-water');
    expect(JSON.parse(kept?.body ?? '')).toEqual(samplePattern());
  });

  it('count their revisions and come last changed first', () => {
    const { patterns } = storeIn();
    patterns.save(samplePattern(), null);
    patterns.save(samplePattern({ id: 'neap', title: 'Neap' }), null);
    expect(patterns.save(samplePattern({ title: 'Slack Water II' }), 1)).toEqual({ revision: 2 });
    expect(patterns.cards().map(({ id, title, revision, sizes }) => ({ id, title, revision, sizes }))).toEqual([
      { id: 'slack-water', title: 'Slack Water II', revision: 2, sizes: 2 },
      { id: 'neap', title: 'Neap', revision: 1, sizes: 2 },
    ]);
  });

  it('are not overwritten by someone who has not seen the last change', () => {
    const { patterns } = storeIn();
    patterns.save(samplePattern(), null);
    patterns.save(samplePattern({ title: 'Hers' }), 1);
    expect(patterns.save(samplePattern({ title: 'Mine' }), 1)).toEqual({ refused: 'changed-elsewhere' });
    expect(patterns.save(samplePattern({ title: 'Mine' }), null)).toEqual({ refused: 'changed-elsewhere' });
    expect(patterns.cards()[0]?.title).toBe('Hers');
  });

  it('say so when they were removed in the meantime', () => {
    const { patterns } = storeIn();
    patterns.save(samplePattern(), null);
    expect(patterns.remove('slack-water')).toBe(true);
    expect(patterns.remove('slack-water')).toBe(false);
    expect(patterns.save(samplePattern(), 1)).toEqual({ refused: 'removed' });
    expect(patterns.save(samplePattern(), null)).toEqual({ revision: 1 });
  });

  it('are named by the recipes they carry, until they carry them no more', () => {
    const { patterns, recipes } = storeIn();
    recipes.save(sampleRecipe(), false);
    patterns.save(samplePattern(), null);
    patterns.save(samplePattern({ id: 'neap', title: 'Neap' }), null);
    expect(recipes.find({ words: '' })[0]?.usedIn).toEqual(['Neap', 'Slack Water']);
    patterns.save(samplePattern({ recipes: [sampleRecipe({ id: 'other' })] }), 1);
    patterns.remove('neap');
    expect(recipes.find({ words: '' })[0]?.usedIn).toEqual([]);
  });
});
