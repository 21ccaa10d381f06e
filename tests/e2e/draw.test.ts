import type { Locator, Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { axeTrouble, axeTroubleInBoth } from '../helpers/axe.ts';
import { describeWithTool } from '../helpers/tools.ts';
import { inStudio } from './inStudio.ts';
import { goTo } from './openStudio.ts';

const tableOf = (page: Page): Locator => page.getByRole('application', { name: /^Drawing of block/ });
const unitsOf = (page: Page): Locator => page.getByRole('list', { name: /^Units of block/ });
const spoken = (page: Page): Locator => page.locator('#view [aria-live="polite"]');

/** Every unit as it is listed: “2 Flying geese 4½″ × 2¼″ 4”. */
async function units(page: Page): Promise<readonly string[]> {
  const lines = await unitsOf(page).getByRole('listitem').allInnerTexts();
  return lines.map((line) =>
    line
      .replace(/In a block:/, '')
      .replace(/\s+/g, ' ')
      .trim(),
  );
}

/** The distinct units of a block that is a grid: “1 Flying geese”. */
async function unitsIn(page: Page): Promise<readonly string[]> {
  const names = await page
    .getByRole('region', { name: /^Units of block/ })
    .locator('ol > li > button')
    .allInnerTexts();
  return names.map((name) => name.split('\n')[0]?.trim() ?? '');
}

/** A blank block of four squares by four, open on the table. */
async function drawNew(page: Page, name: string): Promise<void> {
  await goTo(page, 'Library');
  await page.getByRole('button', { name: 'Draw a new block' }).click();
  const dialog = page.getByRole('dialog', { name: 'A new block' });
  await dialog.getByLabel('Name').fill(name);
  await dialog.getByRole('button', { name: 'Draw it' }).click();
  await tableOf(page).waitFor();
}

/** Where the pointer must be for a place of the drawing, read off the numbers on its rulers. */
async function pointerTo(page: Page): Promise<(x: number, y: number) => readonly [number, number]> {
  const marks = await page.evaluate(() => {
    const table = document.querySelector('[role="application"] svg') as SVGSVGElement;
    const { x, y } = table.getBoundingClientRect();
    return [...table.querySelectorAll('text')].map((text) => {
      const at = (text.parentElement as unknown as SVGGElement).getCTM();
      return { words: text.textContent, x: x + (at?.e ?? 0), y: y + (at?.f ?? 0) };
    });
  });
  // Each number stands twice: above its line, then to the left of it.
  const [above0, left0] = marks.filter(({ words }) => words === '0');
  const [above4] = marks.filter(({ words }) => words === '4');
  if (above0 === undefined || left0 === undefined || above4 === undefined) throw new Error('There are no rulers');
  const unit = (above4.x - above0.x) / 4;
  return (x, y) => [above0.x + x * unit, left0.y + y * unit];
}

/** Presses keys one after another on the table. */
async function keys(page: Page, ...pressed: readonly string[]): Promise<void> {
  for (const key of pressed) await page.keyboard.press(key);
}

describeWithTool('chromium', 'drawing a block', () => {
  const one = inStudio();

  // A star of four geese about a square, four plain corners: nine units, three distinct (common practice, from memory).
  const STAR = [/Plain square 3″ square 4$/, /Flying geese 6″ × 3″ 4$/, /Plain square 6″ square 1$/];

  it('draws a star with the mouse: units are found and counted, acts are undone by name, a reload keeps it', async () => {
    const { page } = one;
    await drawNew(page, 'Ebb star');
    const at = await pointerTo(page);
    const drag = async (from: readonly [number, number], to: readonly [number, number]) => {
      await page.mouse.move(...at(...from));
      await page.mouse.down();
      await page.mouse.move(...at(...to), { steps: 4 });
      await page.mouse.up();
    };
    await page.getByRole('button', { name: /^Once Repeat/ }).click();
    await page.getByRole('option', { name: '4, mirrored' }).click();
    await drag([1, 0], [1, 4]);
    await drag([0, 1], [4, 1]);
    await drag([1, 1], [2, 0]);
    await drag([1, 1], [0, 2]);
    await page.locator('label', { hasText: 'Figure' }).click();
    await page.keyboard.press('i');
    await page.mouse.click(...at(1.2, 0.2));
    await page.mouse.click(...at(0.2, 1.2));
    await page.mouse.click(...at(2, 2));
    await expect.poll(() => units(page)).toEqual(STAR.map((words) => expect.stringMatching(words)));
    await page.getByText('Straight seams').waitFor();
    await page.getByRole('button', { name: 'Undo: make a patch Figure 4 ways' }).click();
    await page.getByRole('button', { name: 'Undo: make a patch Figure 4 ways' }).click();
    await page.getByRole('button', { name: 'Redo: make a patch Figure 4 ways' }).click();
    await page.getByRole('button', { name: 'Redo: make a patch Figure 4 ways' }).click();
    await expect.poll(() => units(page)).toEqual(STAR.map((words) => expect.stringMatching(words)));
    await page.getByText('Kept', { exact: true }).waitFor();
    await page.reload();
    await goTo(page, 'Block');
    await page.getByRole('radio', { name: /Ebb star/ }).check({ force: true });
    await expect.poll(() => units(page)).toEqual(STAR.map((words) => expect.stringMatching(words)));
  });

  it('draws the same star by keyboard alone, every place spoken', async () => {
    const { page } = one;
    await drawNew(page, 'Ebb star');
    await tableOf(page).focus();
    await expect.poll(() => spoken(page).textContent()).toBe('0 across, 0 down, corner of Background');
    await keys(page, 'w', 'w', 'w', 'w', 'c', 'ArrowRight');
    await expect.poll(() => spoken(page).textContent()).toBe('1 across, 0 down, edge of Background');
    await keys(page, 'Enter', 'ArrowDown', 'ArrowDown', 'ArrowDown', 'ArrowDown', 'Enter');
    await page.getByRole('button', { name: 'Undo: cut 4 ways from 1, 0 to 1, 4' }).waitFor();
    await keys(page, 'ArrowUp', 'ArrowUp', 'ArrowUp', 'ArrowLeft');
    await expect.poll(() => spoken(page).textContent()).toBe('0 across, 1 down, edge of Background');
    await keys(page, 'Enter', 'ArrowRight', 'ArrowRight', 'ArrowRight', 'ArrowRight', 'Enter');
    await keys(page, 'ArrowLeft', 'ArrowLeft', 'ArrowLeft');
    await expect.poll(() => spoken(page).textContent()).toBe('1 across, 1 down, corner of Background');
    await keys(page, 'Enter', 'ArrowRight', 'ArrowUp', 'Enter');
    await keys(page, 'ArrowLeft', 'ArrowDown', 'Enter', 'ArrowLeft', 'ArrowDown', 'Enter');
    await page.getByRole('button', { name: 'Undo: cut 4 ways from 1, 1 to 0, 2' }).waitFor();
    // The brush is chosen by Tab and arrows; the keys on the table then go from patch to patch.
    await page.getByRole('radio', { name: 'Background' }).last().focus();
    await keys(page, 'ArrowDown');
    await tableOf(page).focus();
    await keys(page, 'i');
    // One patch of the sky of a goose pointing up, one of a goose pointing left, and the middle; the rest are their images.
    const wanted = ['1¼ across, ½ down', '¼ across, 1½ down', '2 across, 2 down'];
    for (let patch = 0; patch < 17; patch += 1) {
      await keys(page, '.');
      const words = (await spoken(page).textContent()) ?? '';
      if (wanted.some((place) => words.endsWith(`about ${place}`))) await keys(page, 'Enter');
    }
    await expect.poll(() => units(page)).toEqual(STAR.map((words) => expect.stringMatching(words)));
  });

  it('says at the place why something cannot be drawn, and keeps the drawing', async () => {
    const { page } = one;
    await drawNew(page, 'Shoal');
    const before = await units(page);
    await tableOf(page).focus();
    await keys(page, 'c', 'ArrowRight', 'Enter', 'ArrowRight', 'Enter');
    await page.getByRole('alert').getByText('There is a seam already at 1½ across, 0 down.').waitFor();
    await keys(page, 'Escape', 'ArrowDown', 'Enter');
    await page.getByRole('alert').getByText('A cut starts on an edge or at a corner.').waitFor();
    await keys(page, 'Escape', 'm', 'Enter');
    await page.getByRole('alert').getByText('There is no corner here to move.').waitFor();
    expect(await units(page)).toEqual(before);
    await page.getByRole('button', { name: 'Undo: add the block Shoal' }).waitFor();
  });

  it('takes a block of the library off its grid, fixes its sewing, and keeps it as a revision', async () => {
    const { page } = one;
    await goTo(page, 'Block');
    await page.getByRole('button', { name: 'Draw it freely' }).click();
    await tableOf(page).waitFor();
    const panel = page.getByRole('complementary', { name: 'What is selected' });
    await unitsOf(page)
      .getByRole('button', { name: /Flying geese/ })
      .click();
    await panel.getByRole('button', { name: /^Make all 4 this way$/ }).click();
    await panel.getByText('It is fixed by you').waitFor();
    await panel.getByRole('button', { name: 'Block A' }).click();
    await expect.poll(() => panel.getByRole('button', { name: /^Leave it to the studio/ }).count()).toBe(4);
    await panel
      .getByRole('button', { name: /^Leave it to the studio/ })
      .first()
      .click();
    await expect.poll(() => panel.getByRole('button', { name: /^Leave it to the studio/ }).count()).toBe(3);
    await panel.getByRole('button', { name: 'Keep it in the library' }).click();
    await panel.getByText('The library has it as it is here: revision 1.').waitFor();
    await panel.getByRole('button', { name: 'Mirror it' }).click();
    await panel.getByRole('button', { name: 'Keep it as revision 2' }).click();
    await panel.getByText('The library has it as it is here: revision 2.').waitFor();
  });

  it('pulls the block apart, and chooses a size that is on the ruler', async () => {
    const { page } = one;
    await goTo(page, 'Block');
    const slider = page.getByRole('slider', { name: 'How far the block is pulled apart' });
    await slider.focus();
    await keys(page, 'Home');
    await page.getByText('sewn together').waitFor();
    await keys(page, 'End');
    await page.getByText('in patches').waitFor();
    const sizes = page.getByRole('radiogroup', { name: 'Finished block, inches' });
    await sizes.locator('label', { hasText: '12″, on the ruler' }).click();
    await page.getByText('In Cot: 12″ finished').waitFor();
  });

  it('looks nearer, picks by a box, and sets a copied part in elsewhere', async () => {
    const { page } = one;
    await drawNew(page, 'Wrack');
    const table = tableOf(page);
    await table.focus();
    await keys(page, 'c', 'w', 'w', 'w', 'w', 'ArrowRight', 'ArrowRight', 'Enter', 'ArrowDown', 'ArrowDown');
    await keys(page, 'ArrowDown', 'ArrowDown', 'Enter', 'ArrowUp', 'ArrowUp', 'ArrowLeft', 'ArrowLeft', 'Enter');
    await keys(page, 'ArrowRight', 'ArrowRight', 'ArrowRight', 'ArrowRight', 'Enter');
    // Once again a single cut: a diagonal in the first of the four squares.
    await keys(page, 'w', 'w', 'w', 'ArrowUp', 'ArrowUp', 'ArrowLeft', 'ArrowLeft', 'ArrowLeft', 'ArrowLeft', 'Enter');
    await keys(page, 'ArrowRight', 'ArrowRight', 'ArrowDown', 'ArrowDown', 'Enter');
    await page.getByText('5 patches').waitFor();
    const at = await pointerTo(page);
    await keys(page, 's');
    await page.mouse.move(...at(-0.15, -0.15));
    await page.mouse.down();
    await page.mouse.move(...at(2.2, 2.2), { steps: 5 });
    await page.mouse.up();
    await page.getByRole('heading', { name: '2 patches' }).waitFor();
    await table.focus();
    await keys(page, 'Control+c', 'Control+v', 'ArrowRight', 'ArrowRight', 'r', 'Enter');
    await page.getByText('6 patches').waitFor();
    await page.getByRole('button', { name: 'Undo: set in a copied part at 2 across, 0 down' }).waitFor();
    await page.mouse.move(...at(2, 2));
    await page.mouse.wheel(0, -400);
    await expect.poll(() => page.getByRole('button', { name: 'Whole drawing' }).isEnabled()).toBe(true);
    await keys(page, '0');
    await expect.poll(() => page.getByRole('button', { name: 'Whole drawing' }).isEnabled()).toBe(false);
  });

  it('puts a block together from units, cell by cell, by keys alone', async () => {
    const { page } = one;
    await goTo(page, 'Library');
    await page.getByRole('button', { name: 'Draw a new block' }).click();
    const dialog = page.getByRole('dialog', { name: 'A new block' });
    await dialog.getByLabel('Name').fill('Flood');
    await dialog.getByText('Choosing units').click();
    await dialog.getByRole('button', { name: 'Choose units' }).click();
    const grid = page.getByRole('grid', { name: /^Units of block C/ });
    await grid.focus();
    await keys(page, 'Control+a');
    const panel = page.getByRole('complementary', { name: 'What is selected' });
    const choose = async (name: string) => {
      await panel.getByRole('button', { name }).focus();
      await keys(page, 'Enter');
    };
    await choose('Half-square');
    await expect.poll(() => unitsIn(page), { timeout: 20_000 }).toEqual(['1 Half-square triangle']);
    await grid.focus();
    await keys(page, 'Home', 'PageUp', 'r');
    await choose('Square in a square');
    await expect
      .poll(() => unitsIn(page), { timeout: 20_000 })
      .toEqual(['1 Square in a square', '2 Half-square triangle']);
    await page.getByRole('gridcell', { name: 'Square in a square, row 1, column 1, turned a quarter' }).waitFor();
    // Sixteen cells of three inches: one square in a square, fifteen half-square triangles.
    await page.getByText('16 units of 2 kinds').waitFor();
    await panel.getByLabel('Find a recipe').fill('pinwheel');
    await panel.getByRole('button', { name: /^Pinwheel\s*in this pattern/ }).focus();
    await keys(page, 'Enter');
    await page.getByText(/^19 units of/).waitFor();
    expect(await axeTrouble(page)).toEqual([]);
  });

  it('has nothing that axe would change in light or dark', async () => {
    const { page } = one;
    await drawNew(page, 'Ebb');
    await tableOf(page).focus();
    await keys(page, 'ArrowRight', 'Enter');
    expect(await axeTroubleInBoth(page)).toEqual([]);
    await keys(page, 'Escape', 's', 'Enter');
    expect(await axeTroubleInBoth(page)).toEqual([]);
  });
});
