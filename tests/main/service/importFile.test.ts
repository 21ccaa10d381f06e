import { describe, expect, it } from 'vitest';
import type { Imported } from '../../../src/shared/contract.ts';
import { RECIPE_FORMAT } from '../../../src/shared/recipe/schema.ts';
import { samplePattern, sampleRecipe } from '../helpers/samples.ts';
import { refusalFrom, serviceOn } from '../helpers/service.ts';

const pattern = (changes = {}) => ({ name: 'slack.pattern.json', text: JSON.stringify(samplePattern(changes)) });
const recipe = { name: 'mooring.recipe.json', text: JSON.stringify(sampleRecipe()) };

async function idOf(imported: Promise<Imported>): Promise<string> {
  const one = await imported;
  return one.kind === 'recipes' ? one.ids.join(' ') : one.id;
}

describe('a file the designer brings in', () => {
  it('is kept as the pattern or recipe it says it is, whatever it is called', async () => {
    const { service } = serviceOn();
    expect(await service.importFile({ ...pattern(), name: 'a.txt' })).toEqual({ kind: 'pattern', id: 'slack-water' });
    expect(await service.importFile({ ...recipe, name: 'b.pattern.json' })).toEqual({ kind: 'recipe', id: 'mooring' });
    expect(await service.openPattern('slack-water')).toEqual(samplePattern());
  });

  it('never takes the place of one that is kept', async () => {
    const { service } = serviceOn();
    const changed = { ...recipe, text: JSON.stringify(sampleRecipe({ name: 'Their mooring' })) };
    const files = [pattern(), pattern(), pattern(), recipe, changed];
    const ids = [];
    for (const file of files) ids.push(await idOf(service.importFile(file)));
    expect(ids).toEqual(['slack-water', 'slack-water-2', 'slack-water-3', 'mooring', 'mooring-2']);
    expect((await service.openPattern('slack-water-3')).id).toBe('slack-water-3');
  });

  it('is not kept twice when it is a recipe that is here already, word for word', async () => {
    const { service } = serviceOn();
    expect([await idOf(service.importFile(recipe)), await idOf(service.importFile(recipe))]).toEqual([
      'mooring',
      'mooring',
    ]);
    expect(await service.recipes({ words: '' })).toHaveLength(1);
  });

  it('forgets by which revisions of another library its pattern was made', async () => {
    const { service } = serviceOn();
    await service.importFile(pattern({ revisions: { mooring: 7 } }));
    expect(await service.openPattern('slack-water')).toEqual(samplePattern());
  });

  it('keeps a fresh id within the length an id may have', async () => {
    const { service } = serviceOn();
    const id = 'a'.repeat(80);
    await service.importFile(pattern({ id }));
    expect(await idOf(service.importFile(pattern({ id })))).toBe(`${'a'.repeat(78)}-2`);
  });

  it('may name recipe files that were chosen along with it, and no others', async () => {
    const { service } = serviceOn();
    const named = pattern({ recipes: [{ file: 'mooring.recipe.json' }] });
    await service.importFile({ ...named, beside: { 'mooring.recipe.json': recipe.text } });
    expect((await service.openPattern('slack-water')).recipes).toEqual([sampleRecipe()]);
    const refusal = await refusalFrom(service.importFile({ ...named, beside: { 'other.recipe.json': recipe.text } }));
    expect(refusal).toMatchObject({ kind: 'bad-input' });
    expect(refusal.words).toContain('There is no file “mooring.recipe.json” beside this pattern.');
  });

  it('may name a starter recipe without carrying it', async () => {
    const { service } = serviceOn();
    await service.importFile(pattern({ recipes: [] }));
    expect((await service.openPattern('slack-water')).recipes).toEqual([sampleRecipe()]);
  });

  it.each([
    ['is not JSON', '{ "format": ', 'bad-input'],
    ['is empty', '', 'bad-input'],
    ['is another program’s', '{"format":"sheet-music","version":1}', 'bad-input'],
    ['is JSON of no kind', '[1, 2, 3]', 'bad-input'],
    [
      'names a recipe file that did not come with it',
      pattern({ recipes: [{ file: 'x.recipe.json' }] }).text,
      'bad-input',
    ],
    ['is of a newer recipe format', JSON.stringify({ ...sampleRecipe(), version: RECIPE_FORMAT + 1 }), 'newer-file'],
  ])('is refused by its name, and nothing is kept, when it %s', async (_, text, kind) => {
    const { service } = serviceOn();
    const refusal = await refusalFrom(service.importFile({ name: 'from-a-friend.json', text }));
    expect(refusal.kind).toBe(kind);
    expect(refusal.words).toContain('from-a-friend.json');
    expect(await service.patterns()).toEqual([]);
    expect(await service.recipes({ words: '' })).toEqual([]);
  });

  it('is refused with the place that is wrong', async () => {
    const { service } = serviceOn();
    const [cot, lap] = samplePattern().sizes;
    const refusal = await refusalFrom(service.importFile(pattern({ sizes: [cot, { ...lap, across: 0 }] })));
    expect(refusal.findings).toMatchObject([{ where: { path: 'sizes[1].across' } }]);
    expect(refusal.words).toContain('slack.pattern.json');
    expect(refusal.words).toContain('sizes[1].across');
  });
});
