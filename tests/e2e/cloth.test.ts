import { readFileSync } from 'node:fs';
import type { Locator, Page } from 'playwright-core';
import sharp from 'sharp';
import { expect, it } from 'vitest';
import { axeTrouble, axeTroubleInBoth } from '../helpers/axe.ts';
import { describeWithTool } from '../helpers/tools.ts';
import { inStudio } from './inStudio.ts';
import { goTo } from './openStudio.ts';

function panelOf(page: Page): Locator {
  return page.getByRole('complementary', { name: 'What is selected' });
}

/** Goes to a part of the cloth view by its word. */
async function cloth(page: Page, part: string): Promise<void> {
  await goTo(page, 'Cloth');
  await page.locator('#view').getByText(part, { exact: true }).first().click();
}

/** Puts a pattern of the tests on the table. */
async function bring(page: Page, name: string): Promise<void> {
  const file = new URL(`../fixtures/patterns/${name}.pattern.json`, import.meta.url);
  await page.evaluate(
    async ([named, text]) => {
      const call = (to: string, input: unknown) =>
        fetch(`/call/${to}`, {
          method: 'POST',
          headers: { 'content-type': 'application/json' },
          body: JSON.stringify([input]),
        }).then((answer) => answer.json());
      const { value } = await call('importFile', { name: `${named}.json`, text });
      await call('openPattern', value.id);
    },
    [name, readFileSync(file, 'utf8')],
  );
  await page.reload();
  await page.getByText(/^Fits/).first().waitFor();
}

describeWithTool('chromium', 'the cloth view', () => {
  const one = inStudio();

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

  it('cuts a border along the cloth when told so, and buys the cloth that takes', async () => {
    const { page } = one;
    await cloth(page, 'Finishing');
    const way = page.getByRole('radiogroup', { name: 'How Quay border is cut' });
    await way.getByText('Along the cloth, in one piece').click();
    await page.getByRole('button', { name: /^Undo: / }).waitFor();
    await cloth(page, 'Cutting');
    // Figures are drawn once they are in sight.
    await page.locator('#cut-deep').scrollIntoViewIfNeeded();
    // The sides of the Cot's Quay border are cut 47½ long (34 × 52 finished, borders sewn on sides first), so the cloth is.
    await page
      .getByText(/^47½″$/)
      .first()
      .waitFor();
  });

  it('buys a fabric in fat quarters, and says how many and what they cost', async () => {
    const { page } = one;
    await cloth(page, 'Cutting');
    await page.locator('#view').getByRole('button', { name: 'Buoy', exact: true }).click();
    const panel = panelOf(page);
    await panel.getByText('In sheets').click();
    // 14 squares of 3⅛: 5 across 18 and 6 along 21 are 30, so one fat quarter does (plain geometry).
    await page.getByText('1 fat quarter; fewer cannot do.').waitFor();
    await page.getByRole('img', { name: /^How the sheets are cut: one kind of sheet/ }).waitFor();
    await panel.getByLabel('Price of one fat quarter').fill('3.5');
    await panel.getByLabel('Price of one fat quarter').press('Enter');
    await cloth(page, 'Kits');
    await page.getByRole('listitem').filter({ hasText: '1 fat quarter of Buoy' }).waitFor();
    const table = page.getByRole('region', { name: 'What the cloth costs' });
    // Twelve kits of one fat quarter at 3.50: 42.
    await table.getByText('42.00').waitFor();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as a table (CSV)' }).click(),
    ]);
    expect(download.suggestedFilename()).toBe('harbour-lights-cot-12-kits.csv');
    expect(readFileSync(await download.path(), 'utf8')).toContain('Foam,blocks (Cot),12,0.75,¾ yd');
  });

  it('has a plan proven by the host, keeps what that found with the pattern, and can be stopped', async () => {
    const { page } = one;
    await cloth(page, 'Cutting');
    await page.getByRole('button', { name: 'Prove it: Sand' }).click();
    await page.getByRole('button', { name: 'Undo: cut Sand by the proven plan' }).waitFor({ timeout: 60_000 });
    const sand = page.locator('#cut-sand');
    await sand.getByText(/^(Proven: no plan is shorter|A plan .* shorter was found)/).waitFor();
    await sand.getByRole('button', { name: 'Back to the usual plan: Sand' }).click();
    await page.getByRole('button', { name: 'Undo: cut Sand by the usual plan' }).waitFor();
    // A proof may end at any moment: here it is said to go on until it is stopped.
    const going = { value: { state: 'working', progress: 0.4, doing: 'Looking for the shortest plan' } };
    await page.route('**/call/job', (route) => route.fulfill({ json: going }));
    await page.getByRole('radio', { name: /^Bed/ }).click();
    await page.getByRole('button', { name: 'Prove it: Sand' }).click();
    await page.getByRole('button', { name: 'Stop' }).click();
    await expect.poll(() => page.getByRole('button', { name: 'Stop' }).count()).toBe(0);
  });

  it('shows a fabric by a photograph, cropped and to scale, wherever it is drawn; and says what a wrong file is', async () => {
    const { page } = one;
    await cloth(page, 'Fabrics');
    await page.locator('#view').getByRole('button', { name: 'Buoy', exact: true }).click();
    const panel = panelOf(page);
    const choose = (file: string, mimeType: string, buffer: Buffer) =>
      panel.locator('input[type=file]').setInputFiles({ name: file, mimeType, buffer });
    await choose('wool.jpg', 'image/jpeg', Buffer.from('Dear diary, today we cut the borders.'));
    await panel.getByRole('alert').getByText('wool.jpg', { exact: false }).waitFor();
    const picture = await sharp({ create: { width: 400, height: 300, channels: 3, background: '#8a3020' } })
      .jpeg()
      .toBuffer();
    await choose('buoy.jpg', 'image/jpeg', picture);
    await panel.getByRole('button', { name: 'Crop and scale' }).click();
    await page.getByText('A length on the ruler in the picture').click();
    // The ruler's marks are 200 pixels apart and stand for 4 inches, so 400 × 300 pixels show 8 × 6 inches.
    for (const [label, pixels] of [
      ['From, pixels across', 50],
      ['To, across', 250],
    ] as const) {
      await page.getByLabel(label).fill(String(pixels));
      await page.getByLabel(label).press('Enter');
    }
    await page.getByLabel('Between the marks').fill('4');
    await page.getByLabel('Between the marks').press('Enter');
    await page.getByText(/^The part shows 8″ × 6″ of cloth/).waitFor();
    await page.getByRole('button', { name: 'Take this part' }).click();
    await panel.getByText('Shows 8″ × 6″ of cloth.').waitFor();
    await page.locator('#view pattern image').first().waitFor({ state: 'attached' });
    await panel.getByRole('button', { name: 'Make it scrappy' }).click();
    await panel.getByRole('heading', { name: 'Scraps, 2 fabrics' }).waitFor();
    expect(await axeTrouble(page)).toEqual([]);
  });

  it('tells whether one bundle is enough, lets strips be set aside, and takes another bundle', async () => {
    const { page } = one;
    await bring(page, 'six-lamps');
    await cloth(page, 'Bundle');
    // Six such blocks bordered to about 41 × 57 come from one bundle of forty strips (common practice).
    await page.getByRole('heading', { name: 'One bundle is enough for Lap.' }).waitFor();
    await page.getByText(/^What breaks first:/).waitFor();
    for (const number of [21, 22, 23, 24]) await page.getByRole('button', { name: `${number}, dark` }).press('Space');
    await page.getByText('Without these 4 strips the others are not enough.').waitFor();
    await page.getByRole('button', { name: '24, dark, set aside' }).press('Space');
    await page.getByText(/Without these 3 strips the others are enough/).waitFor();
    await page.getByRole('button', { name: 'Take them back' }).click();
    await page.getByRole('button', { name: /^Take this bundle: As few strips as will do/ }).click();
    await page.getByRole('button', { name: 'Undo: change the bundle of strips' }).waitFor();
    await page.getByRole('heading', { name: 'One bundle is enough for Lap.' }).waitFor();
    await panelOf(page).getByLabel('Dark', { exact: true }).fill('9');
    await panelOf(page).getByLabel('Dark', { exact: true }).press('Enter');
    await page.getByRole('heading', { name: /^One bundle is not enough for Lap: it takes 2\.$/ }).waitFor();
    await page.getByText(/^The fewest strips that would do:/).waitFor();
    expect(await axeTrouble(page)).toEqual([]);
  });

  it('has nothing that axe would change in light or dark', async () => {
    const { page } = one;
    const looks = async (where: string) => expect([where, await axeTroubleInBoth(page)]).toEqual([where, []]);
    await cloth(page, 'Cutting');
    await page.getByRole('button', { name: /^Piece D / }).focus();
    await looks('cutting');
    await cloth(page, 'Charts');
    await page.getByText('Below 41″', { exact: false }).first().waitFor();
    await looks('charts');
    await cloth(page, 'Fabrics');
    await looks('fabrics');
    await cloth(page, 'Bundle');
    await page.getByRole('button', { name: 'Make it from a bundle of strips' }).click();
    await page.getByRole('heading', { name: /^No number of these bundles is enough for Cot/ }).waitFor();
    await looks('a bundle that no number of is enough');
    await cloth(page, 'Finishing');
    await looks('finishing');
    await cloth(page, 'Kits');
    await page.locator('#view').getByRole('button', { name: 'Foam' }).first().click();
    await panelOf(page).getByText('In sheets').click();
    await looks('kits, and a fabric in sheets');
  });
});
