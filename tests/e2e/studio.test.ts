import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { VIEW_IDS } from '../../src/renderer/state/viewId.ts';
import { axeTroubleInBoth } from '../helpers/axe.ts';
import { describeWithTool } from '../helpers/tools.ts';
import { inStudio } from './inStudio.ts';
import { goTo } from './openStudio.ts';

describeWithTool('chromium', 'the studio in a browser', () => {
  const one = inStudio();

  it('opens on the finished demo, which fits in every size', async () => {
    const { page } = one;
    expect(await page.getByRole('heading', { level: 1 }).textContent()).toBe('Harbour Lights');
    expect(await page.getByText('Fits in all 3 sizes.').first().isVisible()).toBe(true);
    expect(await page.title()).toBe('Harbour Lights: Quilt · Piecewright');
  });

  it('keeps an edit without being asked, names it for undo, and has it still after a reload', async () => {
    const { page } = one;
    await goTo(page, 'Quilt');
    const panel = page.getByRole('complementary', { name: 'What is selected' });
    const title = panel.getByLabel('Title');
    await title.fill('Harbour Nights');
    await title.press('Enter');
    await page.getByRole('button', { name: 'Undo: call the pattern “Harbour Nights”' }).waitFor();
    await page.getByText('Kept', { exact: true }).waitFor();
    await page.reload();
    await page.getByRole('heading', { level: 1, name: 'Harbour Nights' }).waitFor();
  });

  it('undoes and redoes by name, from the keyboard', async () => {
    const { page } = one;
    const heading = page.getByRole('heading', { level: 1 });
    const title = page.getByLabel('Title');
    await title.fill('Harbour Nights');
    await title.press('Enter');
    await heading.getByText('Harbour Nights').waitFor();
    // The field still has the focus, but what is in it is in the pattern: undo is the pattern's.
    await page.keyboard.press('Control+z');
    await heading.getByText('Harbour Lights').waitFor();
    await page.getByRole('button', { name: 'Redo: call the pattern “Harbour Nights”' }).waitFor();
    await page.keyboard.press('Control+Shift+z');
    await heading.getByText('Harbour Nights').waitFor();
  });

  it('says at the foot what does not fit, and a click goes there', async () => {
    const { page } = one;
    const panel = page.getByRole('complementary', { name: 'What is selected' });
    await panel.getByText('Cot', { exact: true }).click();
    const block = panel.getByLabel('Finished block');
    await block.fill('7.3');
    await block.press('Enter');
    const line = page.getByRole('contentinfo').getByRole('button', { name: /^Fits in 2 of 3 sizes\./ });
    await line.waitFor();
    await goTo(page, 'Library');
    await line.click();
    await page.waitForURL(/#(quilt|block)$/);
  });

  it('is walked through by keyboard alone', async () => {
    const { page } = one;
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('To the cloth');
    await page.keyboard.press('Enter');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('view');
    await page.keyboard.press('1');
    await page.waitForURL(/#library$/);
    await page.keyboard.press('3');
    await page.waitForURL(/#quilt$/);
    await page.keyboard.press(']');
    await page.getByRole('radio', { name: /^Lap/, checked: true }).waitFor();
    await page.keyboard.press('?');
    await page.getByRole('dialog', { name: 'What can be done here' }).waitFor();
    await page.keyboard.type('library');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await page.waitForURL(/#library$/);
  });

  it('says clearly when the disk refuses, keeps the work in hand, and keeps it once there is room', async () => {
    const { page } = one;
    const refusal = { kind: 'no-room', words: 'There is no room left on the disk.' };
    await page.route('**/call/savePattern', (route) => route.fulfill({ json: { refusal } }));
    const title = page.getByLabel('Title');
    await title.fill('Harbour Nights');
    await title.press('Enter');
    await page.getByRole('button', { name: 'Not kept: why?' }).click();
    const dialog = page.getByRole('dialog', { name: 'Not kept yet' });
    await dialog.getByText(refusal.words).waitFor();
    await page.unroute('**/call/savePattern');
    await dialog.getByRole('button', { name: 'Try again' }).click();
    await page.getByText('Kept', { exact: true }).waitFor();
    await page.reload();
    await page.getByRole('heading', { level: 1, name: 'Harbour Nights' }).waitFor();
  });

  it('never writes over what another window kept: both can be kept', async () => {
    const { page, context } = one;
    const other = await context.newPage();
    await other.goto(new URL(one.address).origin);
    const rename = async (where: Page, to: string) => {
      const title = where.getByLabel('Title');
      await title.fill(to);
      await title.press('Enter');
    };
    await rename(other, 'Theirs');
    await other.getByText('Kept', { exact: true }).waitFor();
    await rename(page, 'Mine');
    await page.getByRole('button', { name: 'Not kept: why?' }).click();
    await page.getByRole('button', { name: 'Keep both' }).click();
    await page.getByText('Kept', { exact: true }).waitFor();
    await goTo(page, 'Library');
    await page.getByRole('option', { name: 'Theirs' }).waitFor();
    await page.getByRole('option', { name: 'Mine, a copy' }).waitFor();
  });

  it('makes a pattern from a recipe', async () => {
    const { page } = one;
    await goTo(page, 'Library');
    await page.getByRole('searchbox', { name: 'Find a pattern or a block' }).fill('sawt');
    await page.getByRole('option', { name: 'Sawtooth star' }).click();
    await page.getByRole('button', { name: 'Make a pattern from it' }).click();
    const dialog = page.getByRole('dialog');
    await dialog.getByLabel('Title').fill('Spring Tide');
    await dialog.getByRole('button', { name: 'Make it' }).click();
    await page.getByRole('heading', { level: 1, name: 'Spring Tide' }).waitFor();
    await page.getByText('Fits in all 3 sizes.').first().waitFor();
    await page.getByText('Kept', { exact: true }).waitFor();
  });

  it('takes a removed pattern back', async () => {
    const { page } = one;
    await goTo(page, 'Library');
    await page.getByRole('button', { name: 'Remove' }).click();
    await page.getByRole('button', { name: 'Remove it' }).click();
    await page.getByRole('button', { name: 'Put it back' }).click();
    await page.getByRole('option', { name: 'Harbour Lights' }).waitFor();
  });

  it('brings in a file, and says what is the matter with one it cannot read', async () => {
    const { page } = one;
    await goTo(page, 'Library');
    const choose = async (name: string, text: string) => {
      const chooser = page.waitForEvent('filechooser');
      await page.getByRole('button', { name: 'Bring in a file' }).click();
      await (await chooser).setFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
    };
    await choose('torn.pattern.json', '{ "format": ');
    await page
      .getByText(/torn\.pattern\.json/)
      .first()
      .waitFor();
    expect(await page.getByRole('heading', { level: 1 }).textContent()).toBe('Harbour Lights');
    const recipe = readFileSync(new URL('../../resources/recipes/pinwheel.recipe.json', import.meta.url), 'utf8');
    await choose('whirl.recipe.json', recipe.replace('"pinwheel"', '"whirl"').replace('"Pinwheel"', '"Whirl"'));
    await page.getByRole('region', { name: 'Whirl' }).getByText('Block recipe').waitFor();
  });

  it('has nothing that axe would change in light or dark', async () => {
    const { page } = one;
    for (const view of VIEW_IDS) {
      await page.evaluate((id) => {
        document.location.hash = id;
      }, view);
      await page.waitForTimeout(600);
      expect([view, await axeTroubleInBoth(page)]).toEqual([view, []]);
    }
    await page.keyboard.press('?');
    await page.getByRole('dialog').waitFor();
    expect(await axeTroubleInBoth(page)).toEqual([]);
  });
});
