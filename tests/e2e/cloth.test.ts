import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { AxeBuilder } from '@axe-core/playwright';
import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, it, vi } from 'vitest';
import { launchBrowser } from '../helpers/browser.ts';
import { describeWithTool } from '../helpers/tools.ts';
import { buildWindow, goTo, type OpenStudio, openStudio, type Visit, visit } from './openStudio.ts';

function panelOf(page: Page): Locator {
  return page.getByRole('complementary', { name: 'What is selected' });
}

/** Goes to a part of the cloth view by its word. */
async function cloth(page: Page, part: string): Promise<void> {
  await goTo(page, 'Cloth');
  await page.locator('#view').getByText(part, { exact: true }).first().click();
}

/** What axe finds wrong, one line each. */
async function trouble(page: Page): Promise<readonly string[]> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  return violations.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id} at ${target}`));
}

// A browser on a machine with two busy cores takes its time.
vi.setConfig({ testTimeout: 90_000 });

describeWithTool('chromium', 'the cloth view', () => {
  let window: Awaited<ReturnType<typeof buildWindow>>;
  let browser: Browser;
  let home: string;
  let studio: OpenStudio;
  let one: Visit;

  beforeAll(async () => {
    [window, browser] = await Promise.all([buildWindow(), launchBrowser()]);
  });
  afterAll(async () => {
    await browser.close();
    window.remove();
  });
  beforeEach(async () => {
    home = mkdtempSync(join(tmpdir(), 'piecewright-home-'));
    studio = await openStudio(window.folder, home);
    one = await visit(browser, studio.address);
  });
  afterEach(async () => {
    await one.context.close();
    await studio.close();
    rmSync(home, { recursive: true, force: true });
    expect(one.complaints).toEqual([]);
  });

  it('shows where a piece goes, pointed at in the cutting plan or walked to by keyboard, and the way back', async () => {
    const { page } = one;
    await cloth(page, 'Cutting');
    const where = page.getByRole('region', { name: 'Where the pieces go' });
    await page.getByRole('button', { name: /^Piece D / }).focus();
    // Each of the 32 squares becomes two of the small triangles of flying geese: 64 patches (cut chart, four at a time).
    await where.getByText('Piece D: 64 patches of the quilt').waitFor();
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { level: 2, name: 'Piece D' }).waitFor();
    const quilt = where.getByRole('img', { name: 'Where the pieces go in the quilt.' });
    const box = await quilt.boundingBox();
    if (box === null) throw new Error('The quilt is not on screen');
    // The outermost border of the demo's Cot, half way down its left side.
    await page.mouse.click(box.x + box.width * 0.03, box.y + box.height / 2);
    await page.getByRole('heading', { level: 2, name: 'Piece N' }).waitFor();
    await panelOf(page).getByText('Quay border, sides').waitFor();
    await where.getByRole('radio', { name: 'Rope border' }).click();
    await where.getByText(/^Pieces L, M: 4 patches/).waitFor();
  });

  it.each(['light', 'dark'] as const)('has nothing that axe would change, in %s', async (colorScheme) => {
    const { page } = one;
    await page.emulateMedia({ colorScheme });
    const looks = async (where: string) => expect([where, await trouble(page)]).toEqual([where, []]);
    await cloth(page, 'Cutting');
    await page.getByRole('button', { name: /^Piece D / }).focus();
    await looks('cutting');
  });
});
