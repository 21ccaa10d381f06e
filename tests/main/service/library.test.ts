import { describe, expect, it } from 'vitest';
import { freshFolder, storeIn } from '../helpers/folder.ts';
import { samplePattern, sampleRecipe } from '../helpers/samples.ts';
import { refusalFrom, serviceOn } from '../helpers/service.ts';

const demo = samplePattern({ id: 'demo', title: 'The demo' });
const starters = { recipes: [], demo: [{ name: 'demo.pattern.json', text: JSON.stringify(demo) }] };

function serviceWithDemo() {
  const served = serviceOn();
  served.store.starters.putIn(starters, {
    recipe: fail,
    recipes: fail,
    pattern: () => ({ ok: true, value: demo }),
    kind: fail,
  });
  return served;
}

function fail(): never {
  throw new Error('not asked for here');
}

describe('the pattern to open first', () => {
  const first = async (served: ReturnType<typeof serviceOn>) => (await served.service.about()).first;

  it('is nothing in an empty library', async () => {
    expect(await first(serviceOn())).toBe('');
  });

  it('is the demo on a first start', async () => {
    expect(await first(serviceWithDemo())).toBe('demo');
  });

  it('is the last one opened or made, also after a restart', async () => {
    const folder = freshFolder();
    const { service } = serviceOn({ store: storeIn(folder) });
    await service.savePattern({ pattern: samplePattern(), revision: null });
    await service.savePattern({ pattern: samplePattern({ id: 'neap' }), revision: null });
    expect((await service.about()).first).toBe('neap');
    await service.openPattern('slack-water');
    expect(await first(serviceOn({ store: storeIn(folder) }))).toBe('slack-water');
  });

  it('is not one that was only looked at', async () => {
    const { service } = serviceOn();
    await service.savePattern({ pattern: samplePattern(), revision: null });
    await service.savePattern({ pattern: samplePattern({ id: 'neap' }), revision: null });
    expect((await service.lookAtPattern('slack-water')).id).toBe('slack-water');
    expect((await service.about()).first).toBe('neap');
  });

  it('is another when the last one, or the demo, was removed', async () => {
    const served = serviceWithDemo();
    await served.service.savePattern({ pattern: samplePattern(), revision: null });
    await served.service.removePattern('slack-water');
    expect(await first(served)).toBe('demo');
    await served.service.savePattern({ pattern: samplePattern(), revision: null });
    await served.service.openPattern('demo');
    await served.service.removePattern('demo');
    expect(await first(served)).toBe('slack-water');
  });
});

describe('keeping a pattern', () => {
  it('answers the revision that the next save must name', async () => {
    const { service } = serviceOn();
    expect(await service.savePattern({ pattern: samplePattern(), revision: null })).toEqual({ revision: 1 });
    expect(await service.savePattern({ pattern: samplePattern({ title: 'Ebb' }), revision: 1 })).toEqual({
      revision: 2,
    });
    expect(await service.openPattern('slack-water')).toEqual(samplePattern({ title: 'Ebb' }));
    expect(await service.patterns()).toMatchObject([{ id: 'slack-water', title: 'Ebb', revision: 2 }]);
  });

  it('refuses to overwrite a change made elsewhere, and one of a pattern removed elsewhere', async () => {
    const { service } = serviceOn();
    await service.savePattern({ pattern: samplePattern(), revision: null });
    await service.savePattern({ pattern: samplePattern(), revision: 1 });
    const stale = await refusalFrom(service.savePattern({ pattern: samplePattern(), revision: 1 }));
    expect(stale).toMatchObject({ kind: 'changed-elsewhere', words: expect.stringContaining('Slack Water') });
    await service.removePattern('slack-water');
    const gone = await refusalFrom(service.savePattern({ pattern: samplePattern(), revision: 2 }));
    expect(gone.kind).toBe('not-found');
  });

  it('says so when there is no such pattern or recipe', async () => {
    const { service } = serviceOn();
    for (const call of [service.openPattern, service.removePattern, service.openRecipe, service.removeRecipe]) {
      expect(await refusalFrom(call('nowhere'))).toMatchObject({
        kind: 'not-found',
        words: expect.stringContaining('nowhere'),
      });
    }
  });
});

describe('the recipes', () => {
  it('come as cards that say where they are used', async () => {
    const { service } = serviceOn();
    expect(await service.saveRecipe(sampleRecipe())).toEqual({ revision: 1 });
    await service.savePattern({ pattern: samplePattern(), revision: null });
    expect(await service.recipes({ words: 'moor' })).toEqual([
      {
        id: 'mooring',
        name: 'Mooring',
        tags: ['half-square triangles', 'harbour'],
        starter: false,
        usedIn: ['Slack Water'],
        revision: 1,
        recipe: sampleRecipe(),
      },
    ]);
    expect(await service.openRecipe('mooring')).toEqual(sampleRecipe());
    await service.removeRecipe('mooring');
    expect(await service.recipes({ words: '' })).toEqual([]);
  });

  it('take a search whose other wishes were left open', async () => {
    const { service } = serviceOn();
    await service.saveRecipe(sampleRecipe());
    const open = { words: '', tag: undefined, from: undefined, atMost: undefined };
    expect(await service.recipes(open as { words: string })).toHaveLength(1);
  });
});
