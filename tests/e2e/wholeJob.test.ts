import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { describeWithTool } from '../helpers/tools.ts';
import { inStudio } from './inStudio.ts';
import { goTo } from './openStudio.ts';

/** The quilt of the demo's smallest size: 3 × 5 blocks of 9″, a rope border of 1″ and a quay border of 2½″ all round. */
const BEFORE = '34″ × 52″';
/** The same with a quay border of 3½″: two inches more each way. */
const AFTER = '36″ × 54″';

async function coverSays(page: Page, words: string): Promise<void> {
  await page.locator('#view p').filter({ hasText: words }).first().waitFor({ state: 'attached' });
}

describeWithTool('chromium', 'the whole job, in one sitting', () => {
  const one = inStudio('suite');

  it('shows the pages of the demo as they will print', async () => {
    const { page } = one;
    await goTo(page, 'Pages');
    await page.getByRole('img', { name: 'Page 1', exact: true }).waitFor();
    await coverSays(page, BEFORE);
  });

  it('changes a border of one size, and sizes and fit line follow', async () => {
    const { page } = one;
    await goTo(page, 'Quilt');
    const panel = page.getByRole('complementary', { name: 'What is selected' });
    await panel.getByText('Quay border').click();
    const width = panel.getByLabel('Width in Cot');
    await width.fill('3 1/2');
    await width.press('Enter');
    await page.getByRole('radio', { name: new RegExp(`Cot.*${AFTER}`) }).waitFor();
    await page.getByText('Fits in all 3 sizes.').first().waitFor();
  });

  it('the chart follows: the strips of that border are cut an inch wider', async () => {
    const { page } = one;
    await goTo(page, 'Cloth');
    // A border of 3½″ finished is cut 4″ wide: a seam of ¼″ on each side (common practice).
    await page.locator('#view').getByText(/4″ × /).first().waitFor();
    const why = page
      .locator('#view')
      .getByRole('button', { name: /, why\?$/ })
      .first();
    await why.click();
    expect(await page.getByRole('dialog', { name: 'Why this number' }).textContent()).toContain(' = ');
    await page.keyboard.press('Escape');
  });

  it('the pages follow', async () => {
    const { page } = one;
    await goTo(page, 'Pages');
    await coverSays(page, AFTER);
  });

  it('exports the PDF as a file', async () => {
    const { page } = one;
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Export the PDF' }).click(),
    ]);
    expect(download.suggestedFilename()).toMatch(/\.pdf$/);
    expect(
      readFileSync(await download.path())
        .subarray(0, 5)
        .toString(),
    ).toBe('%PDF-');
  });

  it('takes it back by name, and everything follows again', async () => {
    const { page } = one;
    await page.getByRole('button', { name: /^Undo: / }).click();
    await page.getByRole('radio', { name: new RegExp(`Cot.*${BEFORE}`) }).waitFor();
    await coverSays(page, BEFORE);
    await page.getByRole('button', { name: /^Redo: / }).click();
    await coverSays(page, AFTER);
    await page.getByText('Kept', { exact: true }).waitFor();
  });

  it('is still there after a reload, and after the studio was stopped and started', async () => {
    await one.page.reload();
    await one.page.getByRole('radio', { name: new RegExp(`Cot.*${AFTER}`) }).waitFor();
    await one.again();
    await one.page.getByRole('radio', { name: new RegExp(`Cot.*${AFTER}`) }).waitFor();
  });
});
