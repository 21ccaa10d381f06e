import { readFileSync } from 'node:fs';
import type { Locator, Page } from 'playwright-core';
import { beforeEach, expect, it } from 'vitest';
import { openStore } from '../../src/main/store/store.ts';
import { readRecipesText } from '../../src/shared/pattern/load.ts';
import { recipesText } from '../../src/shared/pattern/save.ts';
import type { Recipe } from '../../src/shared/recipe/schema.ts';
import { axeTrouble } from '../helpers/axe.ts';
import { starter } from '../helpers/starters.ts';
import { describeWithTool } from '../helpers/tools.ts';
import { inStudio } from './inStudio.ts';
import { goTo } from './openStudio.ts';

const blocks = (page: Page): Locator => page.getByRole('listbox', { name: 'Block recipes' });
const block = (page: Page, name: RegExp): Locator => blocks(page).getByRole('option', { name });
const panel = (page: Page): Locator => page.getByRole('complementary', { name: 'What is selected' });

async function choose(page: Page, filter: RegExp, choice: string): Promise<void> {
  await page.getByRole('group', { name: 'Filters' }).getByRole('button', { name: filter }).click();
  await page.getByRole('option', { name: choice, exact: true }).click();
}

/** A shoo-fly with a four-patch in its middle. */
function changedShooFly(): Recipe {
  const shooFly = starter('shoo-fly');
  if (shooFly.body.kind !== 'grid') throw new Error('a shoo-fly is a grid');
  const key = { ...shooFly.body.key, M: { unit: 'four-patch' as const, roles: ['fly', 'middle'] as [string, string] } };
  return { ...shooFly, body: { ...shooFly.body, key } };
}

describeWithTool('chromium', 'the library', () => {
  const one = inStudio();

  beforeEach(() => goTo(one.page, 'Library'));

  it('finds blocks by words, grid, size and skill, by mouse and by keyboard', async () => {
    const { page } = one;
    await page.getByRole('searchbox').fill('star');
    await block(page, /^Sawtooth star/).waitFor();
    await choose(page, /Grid/, 'Nine-patch');
    await block(page, /^Ohio star/).waitFor();
    await expect.poll(() => block(page, /^Sawtooth star/).count()).toBe(0);
    const skills = page.getByRole('group', { name: 'Filters' }).getByRole('button', { name: /Skills/ });
    await skills.focus();
    await page.keyboard.press('Enter');
    await page.keyboard.type('curves');
    await page.keyboard.press('Enter');
    await page.getByText('No block is all of that. Take a filter away.').waitFor();
    expect(await axeTrouble(page)).toEqual([]);
    await page.getByRole('button', { name: 'Clear the filters' }).click();
    await block(page, /^Sawtooth star/).waitFor();
  });

  it('tells of a block how it is made, and gives it away with all it holds', async () => {
    const { page } = one;
    await page.getByRole('searchbox').fill('bear');
    await block(page, /^Bear’s paw/).click();
    await panel(page).getByText('Seven-patch, 7 equal parts').waitFor();
    await panel(page).getByText('7″, 14″').waitFor();
    expect(await axeTrouble(page)).toEqual([]);
    const download = page.waitForEvent('download');
    await panel(page).getByRole('button', { name: 'Save as a file' }).click();
    const file = await (await download).path();
    const read = readRecipesText(readFileSync(file, 'utf8'));
    expect(read.ok && read.value.map(({ id }) => id).sort()).toEqual(['bears-paw', 'claws', 'paw']);
  });

  it('takes a file of many recipes, and refuses one that is wrong anywhere by recipe and place', async () => {
    const { page } = one;
    const mine = { ...starter('pinwheel'), id: 'mine', name: 'My own pinwheel' };
    const chooser = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'Bring in a file' }).click();
    const text = (recipes: readonly Recipe[]) => Buffer.from(recipesText(recipes));
    await (await chooser).setFiles([
      { name: 'good.recipes.json', mimeType: 'application/json', buffer: text([mine, starter('pinwheel')]) },
      {
        name: 'bad.recipes.json',
        mimeType: 'application/json',
        buffer: text([
          { ...mine, id: 'also' },
          { ...mine, id: 'bad', name: 'Bad', finished: 0 },
        ]),
      },
    ]);
    await page.getByText('good.recipes.json is in the library: 1 new recipe, 1 was here already.').waitFor();
    await page.getByText(/bad\.recipes\.json: “Bad”: recipes\[1\]\.finished must be more than 0/).waitFor();
    await page.getByRole('searchbox').fill('my own');
    await expect.poll(() => blocks(page).getByRole('option').count(), { timeout: 30_000 }).toBe(1);
  });

  it('shows a recipe that was just brought in, however far down the shelf it stands', async () => {
    const { page } = one;
    await page.getByRole('searchbox').fill('');
    const last = { ...starter('pinwheel'), id: 'last-of-all', name: 'Zz, last of all' };
    const chooser = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'Bring in a file' }).click();
    const buffer = Buffer.from(JSON.stringify(last));
    await (await chooser).setFiles({ name: 'last.recipe.json', mimeType: 'application/json', buffer });
    const card = block(page, /^Zz, last of all/);
    await card.waitFor();
    await expect.poll(() => card.getAttribute('aria-selected'), { timeout: 30_000 }).toBe('true');
    const [box, shelf] = [await card.boundingBox(), await blocks(page).boundingBox()];
    expect(box?.y ?? 0).toBeGreaterThanOrEqual(shelf?.y ?? Number.POSITIVE_INFINITY);
    expect(box?.y ?? Number.POSITIVE_INFINITY).toBeLessThan((shelf?.y ?? 0) + (shelf?.height ?? 0));
  });

  it('says what a newer revision would change in the pattern before it is taken, and undo takes it back', async () => {
    const { page } = one;
    await page.getByRole('searchbox').fill('shoo');
    await block(page, /^Shoo-fly/).click();
    await panel(page).getByRole('button', { name: 'Make a pattern from it' }).click();
    await page.getByRole('button', { name: 'Make it' }).click();
    await page.getByRole('heading', { name: 'Shoo-fly Quilt' }).first().waitFor();
    // Another window of the house saves a new revision meanwhile.
    const store = openStore({ folder: one.home, now: () => new Date() });
    store.recipes.save(changedShooFly(), false);
    store.close();
    await goTo(page, 'Library');
    await panel(page)
      .getByRole('button', { name: /Revision 2 is newer/ })
      .click();
    const dialog = page.getByRole('dialog', { name: 'A newer revision of Shoo-fly' });
    await dialog.getByText('Four-patch in block A: 1, was none.').waitFor();
    // Cot is 6 × 8 blocks: their 48 middles are 2″ finished, so squares of 2½″.
    await dialog.getByText('Middle, 2½″ × 2½″: cut none, was 48.').waitFor();
    expect(await axeTrouble(page)).toEqual([]);
    await dialog.getByRole('button', { name: 'Take revision 2' }).click();
    await page.getByRole('button', { name: 'Undo: Take revision 2 of Shoo-fly' }).click();
    await panel(page)
      .getByRole('button', { name: /Revision 2 is newer/ })
      .waitFor();
  });

  it('shows every revision of a recipe, and makes an old one the newest again', async () => {
    const { page } = one;
    const store = openStore({ folder: one.home, now: () => new Date() });
    store.recipes.save(changedShooFly(), false);
    store.close();
    await page.getByRole('searchbox').fill('shoo');
    await block(page, /^Shoo-fly/).click();
    await panel(page)
      .getByRole('button', { name: /^Revision 1/ })
      .click();
    await page
      .getByRole('dialog', { name: 'Shoo-fly, revision 1' })
      .getByRole('button', { name: /newest again/ })
      .click();
    await page.getByText('“Shoo-fly” is in the library, revision 3.').waitFor();
    await panel(page)
      .getByRole('button', { name: /^Revision 3.*now$/ })
      .waitFor();
  });
});
