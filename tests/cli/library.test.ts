import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { readRecipesText } from '../../src/shared/pattern/load.ts';
import { recipesText } from '../../src/shared/pattern/save.ts';
import { recipeSchema } from '../../src/shared/recipe/schema.ts';
import { folderForTests, run, starterFile } from './run.ts';

const folder = folderForTests();
let home = 0;
beforeEach(() => {
  home += 1;
  vi.stubEnv('PIECEWRIGHT_HOME', join(folder, `home-${home}`));
});
afterEach(() => vi.unstubAllEnvs());

const pinwheel = recipeSchema.parse(JSON.parse(readFileSync(starterFile('pinwheel'), 'utf8')));
const idsIn = (said: string): string[] => JSON.parse(said).recipes.map(({ id }: { id: string }) => id);

describe('library find', () => {
  test('finds by words and by how a block is made', async () => {
    const { code, said } = await run('library', 'find', 'star', '--with', 'nine-patch', '9"', '--json');
    expect(code).toBe(0);
    expect(idsIn(said)).toEqual(expect.arrayContaining(['ohio-star', 'friendship-star']));
    expect(idsIn(said)).not.toContain('sawtooth-star');
    expect((await run('library', 'find', '--with', 'Curves')).said).toContain('Drunkard’s path');
    expect((await run('library', 'find', 'nothing of the kind')).said).toBe('No recipe like that.');
  });

  test('says what can be asked for when it does not know a choice', async () => {
    const { code, complained } = await run('library', 'find', '--with', 'velvet');
    expect(code).toBe(2);
    expect(complained).toContain('“velvet”');
    expect(complained).toContain('Set-in seams');
  });
});

describe('library bring and give', () => {
  test('a file of recipes goes out with all it holds and comes in again', async () => {
    const out = join(folder, 'given');
    expect(await run('library', 'give', 'bears-paw', '--out', out)).toMatchObject({ code: 0 });
    const file = join(out, 'bears-paw.recipes.json');
    const read = readRecipesText(readFileSync(file, 'utf8'));
    expect(read.ok && read.value.map(({ id }) => id).sort()).toEqual(['bears-paw', 'claws', 'paw']);
    const { said } = await run('library', 'bring', file, '--json');
    expect(JSON.parse(said).brought).toEqual([{ file, kind: 'recipes', ids: [], already: 3 }]);
    expect((await run('recipe', file)).code).toBe(0);
  });

  test('the whole library goes out in one file', async () => {
    const out = join(folder, 'whole');
    expect((await run('library', 'give', '--out', out)).code).toBe(0);
    const read = readRecipesText(readFileSync(join(out, 'library.recipes.json'), 'utf8'));
    expect(read.ok && read.value.length).toBeGreaterThanOrEqual(60);
  });

  test('a file that is wrong is refused by file, recipe and place, and nothing of it is kept', async () => {
    const file = join(folder, 'theirs.recipes.json');
    const [mine, wrong] = [
      { ...pinwheel, id: 'mine', name: 'Mine' },
      { ...pinwheel, id: 'bad', name: 'Bad', finished: 0 },
    ];
    writeFileSync(file, recipesText([mine, wrong]));
    const { code, complained } = await run('library', 'bring', file);
    expect(code).toBe(2);
    expect(complained).toContain('theirs.recipes.json');
    expect(complained).toContain('“Bad”');
    expect(complained).toContain('recipes[1].finished');
    expect(idsIn((await run('library', 'find', 'mine', '--json')).said)).toEqual([]);
  });

  test('what is not there is said, and nothing is written', async () => {
    const out = join(folder, 'none');
    const { code, complained } = await run('library', 'give', 'nowhere', '--out', out);
    expect([code, complained]).toEqual([2, 'There is no recipe “nowhere” here any more.']);
    expect(existsSync(join(out, 'library.recipes.json'))).toBe(false);
  });
});
