import type { Locator, Page } from 'playwright-core';
import { beforeEach, expect, it } from 'vitest';
import { axeTrouble } from '../helpers/axe.ts';
import { describeWithTool } from '../helpers/tools.ts';
import { inStudio } from './inStudio.ts';

describeWithTool('chromium', 'the quilt view', () => {
  const one = inStudio();
  let page: Page;
  let panel: Locator;
  let quilt: Locator;

  beforeEach(() => {
    page = one.page;
    panel = page.getByRole('complementary', { name: 'What is selected' });
    quilt = page.getByRole('grid', { name: /^Blocks of the quilt/ });
  });

  async function undo(what: string): Promise<void> {
    await page.getByRole('button', { name: `Undo: ${what}`, exact: true }).click();
  }

  /** Picks from a list that opens. */
  async function pick(label: string | RegExp, option: string): Promise<void> {
    await panel.getByRole('button', { name: label }).click();
    await page.getByRole('option', { name: option, exact: true }).click();
  }

  it('sets the blocks on point and in strips, each one act, and counts what there is to sew', async () => {
    await panel.getByRole('button', { name: /^Straight/ }).click();
    await panel.getByText('On point', { exact: true }).click();
    // 3 × 5 on point: 15 blocks and 2 × 4 between, in 3 + 5 − 1 diagonal rows.
    await page.getByRole('heading', { level: 2, name: 'On point' }).waitFor();
    await panel.getByText('Diagonal rows').locator('xpath=following-sibling::dd').getByText('7').waitFor();
    await pick(/Corner triangles/, 'Deep water');
    await panel.getByText('Further out').click();
    await panel.getByLabel('Blocks float by').waitFor();
    await undo('let the blocks float');
    await panel.getByText('In strips', { exact: true }).click();
    await pick(/Each is shifted by/, '½ of a block');
    await panel.getByRole('button', { name: /At the ends of shifted strips/ }).waitFor();
    await undo('shift every strip by ½ of a block');
    await undo('set the blocks in strips, in columns');
    await page.getByRole('heading', { level: 2, name: 'On point' }).waitFor();
    // Gone to another setting and come back, the corners are as they were.
    await panel.getByText('Straight', { exact: true }).click();
    await page.getByRole('heading', { level: 2, name: 'Straight' }).waitFor();
    await panel.getByText('On point', { exact: true }).click();
    await panel.getByRole('button', { name: /^Deep water.* Corner triangles/ }).waitFor();
    expect(await axeTrouble(page)).toEqual([]);
  });

  it('puts sashing of three strips between the blocks and takes it away, each one act', async () => {
    await panel.getByRole('button', { name: /^Straight/ }).click();
    const sashing = panel.getByRole('radiogroup', { name: 'Between the blocks' });
    await sashing.getByText('3', { exact: true }).click();
    await panel.getByText('Strip 3: fabric').waitFor();
    await undo('add a strip to the sashing');
    await expect.poll(() => panel.getByText('Strip 3: fabric').count()).toBe(0);
    await sashing.getByText('1 strip').click();
    await panel.getByLabel('Finished width', { exact: true }).fill('2');
    await panel.getByLabel('Finished width', { exact: true }).press('Enter');
    // 34 × 52 and sashing of 2 between 3 × 5 blocks: 2 × 2 wider, 4 × 2 longer.
    await page.getByRole('radio', { name: /^Cot 38″ × 60″/ }).waitFor();
    await pick(/Cornerstones/, 'Deep water');
    await panel.getByText('Also outside').click();
    await page.getByRole('radio', { name: /^Cot 42″ × 64″/ }).waitFor();
    await panel.getByLabel('Width in each size: Cot').fill('1');
    await panel.getByLabel('Width in each size: Cot').press('Enter');
    await page.getByRole('radio', { name: /^Cot 38″ × 58″/ }).waitFor();
    expect(await axeTrouble(page)).toEqual([]);
  });

  it('picks blocks on point by click, by a box and by keys', async () => {
    await panel.getByRole('button', { name: /^Straight/ }).click();
    await panel.getByText('On point', { exact: true }).click();
    await page.getByRole('heading', { level: 2, name: 'On point' }).waitFor();
    await quilt.focus();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowDown');
    await quilt.getByRole('gridcell', { name: /row 2, column 1/, selected: true }).waitFor();
    await page.keyboard.press('r');
    await page.getByRole('button', { name: 'Undo: turn a block' }).waitFor();
  });

  it('takes a classic setting with a press, reflects it, and changes single places by hand', async () => {
    await panel.getByRole('button', { name: /^Motif/ }).click();
    await panel.getByRole('button', { name: /^Checkerboard/ }).waitFor();
    expect(await axeTrouble(page)).toEqual([]);
    await panel.getByRole('button', { name: /^Pinwheel/ }).click();
    await page.getByRole('button', { name: 'Undo: set the blocks in pinwheel' }).waitFor();
    await panel.getByRole('radiogroup', { name: 'Reflected about the middle' }).getByText('Both').click();
    await panel.getByText('Mirrored', { exact: true }).waitFor();
    const places = panel.getByRole('grid', { name: /^Places of the motif/ });
    await places.focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('r');
    await page.getByRole('button', { name: 'Undo: turn a block of the motif' }).waitFor();
    await panel.getByRole('radiogroup', { name: 'Block there' }).getByText('B', { exact: true }).click();
    await page.getByRole('button', { name: 'Undo: put block B in the motif' }).waitFor();
  });

  it('draws a border’s edge to a step of the ruler, by hand and by keys', async () => {
    const box = await quilt.boundingBox();
    if (box === null) throw new Error('The quilt is not on screen');
    // Cot is 34 wide; its outer border has 2½ of its own there, and edges go by quarters of an inch.
    const inch = box.width / 34;
    await page.mouse.move(box.x + box.width - 1, box.y + box.height / 2);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width - 1 + 1.6 * inch, box.y + box.height / 2, { steps: 4 });
    await page.getByText('4″', { exact: true }).waitFor();
    await page.mouse.up();
    await page.getByRole('radio', { name: /^Cot 37″ × 55″/ }).waitFor();
    const edge = page.getByRole('slider', { name: 'Quay border, sides' });
    await edge.focus();
    await page.keyboard.press('ArrowUp');
    await page.getByRole('radio', { name: /^Cot 37½″ × 55½″/ }).waitFor();
    expect(await edge.getAttribute('aria-valuetext')).toBe('4¼″');
  });

  it('mitres a border, and makes one of blocks that closes in every size with one press', async () => {
    await panel.getByText('Quay border').click();
    await panel.getByText('Mitred', { exact: true }).click();
    await page.getByRole('button', { name: 'Undo: mitre the corners of the quay border' }).waitFor();
    await pick(/Made of/, 'Pair of geese');
    await panel.getByText('It does not close', { exact: false }).waitFor();
    await panel
      .getByRole('button', { name: /^Put them in/ })
      .first()
      .click();
    await page.getByText('Fits in all 3 sizes.').first().waitFor();
    await panel.getByText(/\d+ units along the top and \d+ along the sides/).waitFor();
    await panel.getByRole('button', { name: 'The whole quilt' }).click();
    await panel.getByText('Inside quay border').waitFor();
    expect(await axeTrouble(page)).toEqual([]);
  });

  it('swaps a block with the one it is drawn onto, unless Escape is pressed', async () => {
    const box = await quilt.boundingBox();
    if (box === null) throw new Error('The quilt is not on screen');
    // Blocks of Cot are 9 of its 34 by 52 inches, 3½ inside its edge: 1 + 2½ of borders (its demo pattern).
    const middle = (column: number, row: number) =>
      [box.x + (box.width * (3.5 + 9 * column + 4.5)) / 34, box.y + (box.height * (3.5 + 9 * row + 4.5)) / 52] as const;
    const block = (name: RegExp) => quilt.getByRole('gridcell', { name, selected: true });
    await page.mouse.click(...middle(0, 0));
    await block(/^Block A, row 1, column 1/).waitFor();
    await page.mouse.move(...middle(0, 0));
    await page.mouse.down();
    await page.mouse.move(...middle(1, 1), { steps: 4 });
    await page.mouse.move(...middle(1, 0), { steps: 4 });
    await quilt.getByText('Swap', { exact: true }).waitFor();
    await page.keyboard.press('Escape');
    await quilt.getByText('Swap', { exact: true }).waitFor({ state: 'detached' });
    await page.mouse.up();
    await block(/^Block A, row 1, column 1/).waitFor();
    expect(await page.getByRole('button', { name: 'Undo: swap two blocks' }).count()).toBe(0);

    await page.mouse.move(...middle(0, 0));
    await page.mouse.down();
    await page.mouse.move(...middle(1, 0), { steps: 6 });
    await page.mouse.up();
    // The carried block stays picked where it lies now.
    await block(/^Block A, row 1, column 2/).waitFor();
    await undo('swap two blocks');
    await block(/^Block B, row 1, column 2/).waitFor();
  });

  it('swaps two blocks, picks all alike, and paints blocks and fabrics, each one act', async () => {
    await quilt.focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Shift+ArrowRight');
    await page.keyboard.press('s');
    await page.getByRole('button', { name: 'Undo: swap two blocks' }).waitFor();
    await quilt.getByRole('gridcell', { name: /^Block B, row 1, column 1/ }).waitFor();
    await page.keyboard.press('l');
    await page.getByRole('heading', { level: 2, name: '15 blocks' }).waitFor();
    await page.keyboard.press('p');
    await page.getByRole('radiogroup', { name: 'Paint with' }).getByText('Buoy').click();
    const box = await quilt.boundingBox();
    if (box === null) throw new Error('The quilt is not on screen');
    // The outer border of Cot is 2½ of its 52 inches high: its middle at the top.
    await page.mouse.click(box.x + box.width / 2, box.y + (box.height * 1.2) / 52);
    await page.getByRole('button', { name: 'Undo: change the fabric of the quay border' }).waitFor();
    await page.getByText('Only here').click();
    // The middle of the second block of the first row, which was put down as a lantern.
    await page.mouse.click(box.x + box.width / 2, box.y + (box.height * (3.5 + 4.5)) / 52);
    await page.getByRole('button', { name: 'Undo: put block C in a place' }).waitFor();
    await page.keyboard.press('Escape');
    await expect.poll(() => page.getByRole('radiogroup', { name: 'Paint with' }).count()).toBe(0);
    expect(await axeTrouble(page)).toEqual([]);
  });

  it('finds sizes for a bed, adds one, and keeps a mattress of the designer’s own for other patterns', async () => {
    await panel.getByRole('button', { name: 'Find a size' }).click();
    const finder = page.getByRole('dialog', { name: 'Find a size' });
    // Queen is 60 × 80: with a drop of 12 on both sides and the foot, 84 × 92.
    await finder.getByText('84″ = 60 mattress + 2 × 12 drop').waitFor();
    await finder.getByRole('button', { name: 'Find sizes' }).click();
    const add = finder.getByRole('button', { name: /^Add as a size: / });
    await add.first().waitFor({ timeout: 60_000 });
    expect(await axeTrouble(page)).toEqual([]);
    await finder.getByRole('button', { name: 'A mattress of your own' }).click();
    await finder.getByLabel('What it is called').fill('Ship’s bunk');
    await finder.getByLabel('Mattress width').fill('27');
    await finder.getByLabel('Mattress width').press('Enter');
    await finder.getByRole('button', { name: 'Keep it' }).click();
    await finder.getByText('51″ = 27 mattress + 2 × 12 drop').waitFor();
    await finder.getByRole('button', { name: 'Find sizes' }).click();
    await add.first().waitFor({ timeout: 60_000 });
    await add.first().click();
    await page.getByRole('button', { name: 'Undo: add the size Ship’s bunk' }).waitFor();
    await page.getByText('Fits in all 4 sizes.').first().waitFor();
  });

  it('says what comes nearest where no size can be met', async () => {
    await page.keyboard.press('f');
    const finder = page.getByRole('dialog', { name: 'Find a size' });
    await finder.getByText('Two measures').click();
    await finder.getByLabel('Width', { exact: true }).fill('7');
    await finder.getByLabel('Width', { exact: true }).press('Enter');
    await finder.getByRole('button', { name: 'Find sizes' }).click();
    await finder.getByText(/^No size of this design comes near 7″ × 80″/).waitFor({ timeout: 60_000 });
    // The demo is cut from yards: there is no bundle to be enough.
    await finder.getByText('One bundle').click();
    await finder.getByText(/^Say first, under Cloth, what a bundle/).waitFor();
    expect(await finder.getByRole('button', { name: 'Find sizes' }).isDisabled()).toBe(true);
  });

  it('is pulled apart in sewing order, squinted at, looked at closely and laid on a bed', async () => {
    const picture = page.locator('#view [role=img]').first();
    await page.keyboard.press('o');
    await page.getByRole('img', { name: /Drawn apart in the order it is sewn/ }).waitFor();
    expect(await quilt.count()).toBe(0);
    await page.keyboard.press('o');
    await quilt.waitFor();
    const before = (await picture.boundingBox())?.width ?? 0;
    await page.keyboard.press('+');
    await expect.poll(async () => ((await picture.boundingBox())?.width ?? 0) / before).toBeGreaterThan(1.4);
    await page.getByText('1.5 ×').waitFor();
    await page.keyboard.press('0');
    await page.getByRole('button', { name: 'Squint' }).click();
    expect(await axeTrouble(page)).toEqual([]);
    await page.getByText('All sizes').click();
    await page.getByRole('button', { name: /Laid on a bed/ }).click();
    await page.getByRole('option', { name: 'On Queen' }).click();
    // Bed is 95 × 95: over 60 × 80 it hangs (95 − 60) / 2 at the sides, 15 at the foot.
    await page.getByText('On Queen: 17½″ over the sides, 15″ at the foot').waitFor();
    expect(await axeTrouble(page)).toEqual([]);
  });

  it('begins a medallion, adds a round of blocks, and says how many blocks are too many', async () => {
    await panel.getByRole('button', { name: /^Straight/ }).click();
    await panel.getByRole('button', { name: 'Begin a medallion with block A' }).click();
    // One block of 9 and the borders of Cot, 1 and 2½ wide: 16 each way.
    await page.getByRole('radio', { name: /^Cot 16″ × 16″/ }).waitFor();
    await panel.getByRole('button', { name: 'The whole quilt' }).click();
    await panel.getByRole('button', { name: 'Add a round of blocks' }).click();
    await page.getByRole('button', { name: 'Undo: add the round “Round 3”' }).waitFor();
    await panel.getByRole('button', { name: 'The whole quilt' }).click();
    await panel.getByRole('button', { name: /^Lap/ }).click();
    for (const many of ['Blocks across', 'Blocks down']) {
      const field = panel.getByRole('textbox', { name: many });
      await field.fill('200');
      await field.press('Enter');
    }
    await page.getByText('Lap would have 40,000 blocks; the most is 2,500.').first().waitFor();
  });
});
