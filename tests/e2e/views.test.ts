import { readFileSync } from 'node:fs';
import type { Locator, Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { axeTroubleInBoth } from '../helpers/axe.ts';
import { describeWithTool } from '../helpers/tools.ts';
import { inStudio } from './inStudio.ts';
import { goTo } from './openStudio.ts';

function panelOf(page: Page): Locator {
  return page.getByRole('complementary', { name: 'What is selected' });
}

/** The words of the page looked at, as the PDF has them. */
function pageWords(page: Page): Locator {
  return page.locator('#view p.heard');
}

async function undo(page: Page): Promise<void> {
  await page.getByRole('button', { name: /^Undo: / }).click();
}

describeWithTool('chromium', 'the views of a pattern', () => {
  const one = inStudio();

  it('picks, turns and mirrors blocks of the quilt by keyboard, and returns them to the motif', async () => {
    const { page } = one;
    await goTo(page, 'Quilt');
    const quilt = page.getByRole('grid', { name: /^Blocks of the quilt/ });
    await quilt.focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Shift+ArrowDown');
    await page.getByRole('heading', { name: '2 blocks' }).waitFor();
    await page.keyboard.press('r');
    const turned = quilt.getByRole('gridcell', { name: /column 2, turned a quarter$/, selected: true });
    await expect.poll(() => turned.count()).toBe(2);
    // One of the two is its own mirror image: it lies as before, so only the other is mirrored.
    await page.keyboard.press('m');
    await expect.poll(() => quilt.getByRole('gridcell', { name: /mirrored/ }).count()).toBe(1);
    await page.keyboard.press('Delete');
    await expect.poll(() => quilt.getByRole('gridcell', { name: /mirrored|turned/ }).count()).toBe(0);
    await page.getByRole('button', { name: 'Undo: return 2 blocks to the motif' }).waitFor();
  });

  it('picks blocks by drawing a box, and a border by a click on it', async () => {
    const { page } = one;
    await goTo(page, 'Quilt');
    const box = await page.getByRole('grid', { name: /^Blocks of the quilt/ }).boundingBox();
    if (box === null) throw new Error('The quilt is not on screen');
    // The demo's Cot is 34 × 52 with borders of 3½ all round, blocks of 9: from inside the first to inside the fourth.
    const at = (x: number, y: number) => [box.x + (box.width * x) / 34, box.y + (box.height * y) / 52] as const;
    await page.mouse.move(...at(6, 6));
    await page.mouse.down();
    await page.mouse.move(...at(15, 15), { steps: 4 });
    await page.mouse.up();
    await page.getByRole('heading', { name: '4 blocks' }).waitFor();
    await page.mouse.click(...at(17, 1.2));
    await page.getByRole('heading', { level: 2, name: 'Quay border' }).waitFor();
  });

  it('adds a border and a size, and takes each away again', async () => {
    const { page } = one;
    await goTo(page, 'Quilt');
    const panel = panelOf(page);
    await panel.getByRole('button', { name: 'Add a border' }).click();
    await panel.getByLabel('Name').fill('Harbour wall');
    await panel.getByLabel('Name').press('Enter');
    await panel.getByLabel('Finished width').fill('1½');
    await panel.getByLabel('Finished width').press('Enter');
    // Cot was 34 × 52: a border of 1½ all round makes it 37 × 55.
    await page.getByRole('radio', { name: /^Cot 37″ × 55″/ }).waitFor();
    await panel.getByRole('button', { name: 'Remove this border' }).click();
    await page.getByRole('radio', { name: /^Cot 34″ × 52″/ }).waitFor();
    await panel.getByRole('button', { name: 'Add a size' }).click();
    await panel.getByLabel('Name').fill('Wall');
    await panel.getByLabel('Name').press('Enter');
    await page.getByText('Fits in all 4 sizes.').first().waitFor();
    await panel.getByRole('button', { name: 'Remove this size' }).click();
    await page.getByText('Fits in all 3 sizes.').first().waitFor();
  });

  it('turns a cell of a block’s grid, and every block of the quilt with it', async () => {
    const { page } = one;
    await goTo(page, 'Block');
    const block = page.getByRole('grid', { name: /^Units of block A/ });
    await block.focus();
    await page.keyboard.press('ArrowRight');
    const before = await block.getByRole('gridcell').first().getAttribute('aria-label');
    await page.keyboard.press('r');
    await expect.poll(() => block.getByRole('gridcell').first().getAttribute('aria-label')).not.toBe(before);
    await page.getByRole('button', { name: 'Undo: turn a unit' }).waitFor();
  });

  it('shows what each way of making a unit costs, and takes another', async () => {
    const { page } = one;
    await goTo(page, 'Block');
    await page.getByRole('button', { name: /Flying geese/ }).click();
    const ways = panelOf(page).getByRole('radiogroup', { name: 'Way of making this unit' });
    await ways.getByRole('radio', { name: 'Flying geese, four at a time', checked: true }).waitFor();
    // Four at once take a large square of finished width + 1¼ (Quilter's World, June 2024): 4½ finished, 5¾.
    await ways.getByRole('button', { name: /^5¾″/ }).first().waitFor();
    await ways.getByText('Flying geese, stitch and flip').click();
    await goTo(page, 'Cloth');
    await page
      .getByText(/flying geese, rectangle/i)
      .first()
      .waitFor();
    await undo(page);
    await page
      .getByText(/flying geese, large square/i)
      .first()
      .waitFor();
  });

  it('renames and recolours a fabric, everywhere at once', async () => {
    const { page } = one;
    await goTo(page, 'Cloth');
    await page.locator('#view').getByRole('button', { name: 'Deep water' }).first().click();
    const panel = panelOf(page);
    await panel.getByLabel(/^Name/).fill('Midnight');
    await panel.getByLabel(/^Name/).press('Enter');
    await page.locator('#view').getByRole('button', { name: 'Midnight' }).first().waitFor();
    await panel.getByRole('button', { name: /^Colour of Midnight/ }).click();
    const written = page.getByLabel('Written as #rrggbb');
    await written.fill('#102030');
    await written.press('Enter');
    await page.keyboard.press('Escape');
    await panel.getByRole('button', { name: 'Colour of Midnight, #102030' }).waitFor();
  });

  it('answers why, in one short sum', async () => {
    const { page } = one;
    await goTo(page, 'Quilt');
    await panelOf(page).getByText('Quay border').click();
    await panelOf(page).getByRole('button', { name: '3″, why?' }).first().click();
    // 2½ finished and a seam of ¼ on each side (common practice).
    const sum = await page.getByRole('dialog', { name: 'Why this number' }).textContent();
    expect(sum).toMatch(/^3″ = 2½ .*finished \+ ½/);
  });

  it('keeps the page looked at while newer pages are made, and changes paper and ink', async () => {
    const { page } = one;
    await goTo(page, 'Pages');
    await page.getByRole('button', { name: 'Next page' }).click();
    await page.getByText(/^Page 2 of \d+$/).waitFor();
    const before = await pageWords(page).textContent();
    const introduction = panelOf(page).getByLabel('Introduction');
    await introduction.fill('Sewn by lamplight.');
    await introduction.press('Control+Enter');
    await expect.poll(() => pageWords(page).textContent(), { timeout: 30_000 }).toContain('Sewn by lamplight.');
    expect(before).not.toContain('Sewn by lamplight.');
    await page.getByText(/^Page 2 of \d+$/).waitFor();
    const shape = () =>
      page.getByRole('img', { name: 'Page 2' }).evaluate((sheet) => sheet.clientHeight / sheet.clientWidth);
    // US letter is 8½ × 11, A4 210 × 297 (ISO 216).
    expect(await shape()).toBeCloseTo(11 / 8.5, 2);
    await panelOf(page).getByText('A4').click();
    await expect.poll(shape, { timeout: 30_000 }).toBeCloseTo(297 / 210, 2);
  });

  it('shows all pages, and opens one of them', async () => {
    const { page } = one;
    await goTo(page, 'Pages');
    await page.getByRole('button', { name: 'All pages' }).click();
    await page.getByRole('button', { name: 'Open page 3' }).click();
    await page.getByText(/^Page 3 of \d+$/).waitFor();
  });

  it('does not export what does not fit, unless as a draft', async () => {
    const { page } = one;
    await goTo(page, 'Quilt');
    const panel = panelOf(page);
    await panel.getByText('Cot', { exact: true }).click();
    await panel.getByLabel('Finished block').fill('7.3');
    await panel.getByLabel('Finished block').press('Enter');
    await page
      .getByText(/^Fits in 2 of 3 sizes\./)
      .first()
      .waitFor();
    await goTo(page, 'Pages');
    await panel.getByRole('button', { name: 'Export the PDF' }).click();
    await panel.getByText('The pattern does not fit yet, so it is not exported.', { exact: false }).waitFor();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      panel.getByRole('button', { name: 'Export a draft' }).click(),
    ]);
    expect(
      readFileSync(await download.path())
        .subarray(0, 5)
        .toString(),
    ).toBe('%PDF-');
  });

  it('can stop an export that is under way', async () => {
    const { page } = one;
    await goTo(page, 'Pages');
    await page.getByText(/^Page 1 of \d+$/).waitFor();
    await panelOf(page).getByRole('button', { name: 'Export the PDF' }).click();
    await panelOf(page).getByRole('button', { name: 'Stop' }).click();
    await panelOf(page).getByRole('alert').waitFor();
    await panelOf(page).getByRole('button', { name: 'Export the PDF' }).waitFor();
  });

  it('leaves the usual cautions out only when told so twice', async () => {
    const { page } = one;
    await goTo(page, 'Pages');
    const panel = panelOf(page);
    await panel.getByRole('button', { name: 'Leave the usual cautions out' }).click();
    await page.getByRole('dialog').getByRole('button', { name: 'Leave them out' }).click();
    await panel.getByRole('button', { name: 'Put the usual cautions back' }).click();
    await panel.getByText(/The usual cautions .* are printed\./).waitFor();
  });

  it('adds a block from the library, and takes it out again', async () => {
    const { page } = one;
    await goTo(page, 'Library');
    await page.getByRole('searchbox', { name: 'Find a pattern or a block' }).fill('churn');
    await page.getByRole('option', { name: 'Churn dash' }).click();
    await page.getByRole('button', { name: 'Add it to “Harbour Lights”' }).click();
    await page.getByRole('heading', { level: 2, name: 'Churn dash' }).waitFor();
    await panelOf(page).getByRole('button', { name: 'Remove block C' }).click();
    await page.getByRole('heading', { level: 2, name: 'Lantern' }).waitFor();
  });

  it('has nothing that axe would change in what is selected in light or dark', async () => {
    const { page } = one;
    const panel = panelOf(page);
    const looks = async (where: string) => expect([where, await axeTroubleInBoth(page)]).toEqual([where, []]);
    await goTo(page, 'Quilt');
    await page.getByRole('grid', { name: /^Blocks of the quilt/ }).focus();
    await page.keyboard.press('ArrowDown');
    await looks('a block of the quilt');
    await panel.getByRole('button', { name: 'The whole quilt' }).click();
    await panel.getByText('Quay border').click();
    await looks('a border');
    await panel.getByRole('button', { name: 'The whole quilt' }).click();
    await panel.getByText('Lap', { exact: true }).click();
    await looks('a size');
    await page.getByText('All sizes').click();
    await looks('all sizes');
    await goTo(page, 'Block');
    await page.getByRole('button', { name: /Flying geese/ }).click();
    await looks('a unit');
    await goTo(page, 'Cloth');
    await page.getByRole('button', { name: 'Piece C' }).click();
    await looks('a piece');
    await goTo(page, 'Pages');
    await page.getByRole('button', { name: 'All pages' }).click();
    await page.getByRole('button', { name: 'Open page 2' }).waitFor();
    await looks('all pages');
  });
});
