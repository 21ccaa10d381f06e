import { expect, it, vi } from 'vitest';
import { axeTroubleInBoth } from '../helpers/axe.ts';
import { describeWithTool } from '../helpers/tools.ts';
import { inStudio } from './inStudio.ts';
import { goTo } from './openStudio.ts';

describeWithTool('chromium', 'a pattern measured in centimetres', () => {
  const one = inStudio('suite');
  const panel = () => one.page.getByRole('complementary', { name: 'What is selected' });

  /** Everything on the screen, seen, typed or heard, that speaks of inches or yards; but for the word on the control. */
  function inchWords(): Promise<readonly string[]> {
    return one.page.evaluate(() => {
      const all = new Set<string>();
      for (const element of document.querySelectorAll('body *')) {
        for (const node of element.childNodes) if (node.nodeType === Node.TEXT_NODE) all.add(node.textContent ?? '');
        for (const name of ['aria-label', 'aria-valuetext', 'title', 'placeholder'])
          all.add(element.getAttribute(name) ?? '');
        if (element instanceof HTMLInputElement && element.type === 'text') all.add(element.value);
      }
      return [...all].filter((text) => text !== 'Inches' && /″|\binch(es)?\b|\byd\b|\byards?\b/i.test(text));
    });
  }

  it('says before what every size would become, and takes it as one act', async () => {
    const { page } = one;
    await goTo(page, 'Cloth');
    await panel().getByText('Centimetres', { exact: true }).click();
    const dialog = page.getByRole('dialog', { name: 'Measure this pattern in centimetres' });
    await dialog.getByText('Nothing that fits now would stop fitting.').waitFor();
    // The nearest widths to 9, 10 and 12 inches (22.9, 25.4, 30.5 cm) whose eighths are half centimetres.
    const block = (row: string) => dialog.getByRole('row', { name: row }).getByRole('cell').nth(1).textContent();
    expect(await Promise.all(['Cot', 'Lap', 'Bed'].map(block))).toEqual(['24 cm', '24 cm', '32 cm']);
    expect(await axeTroubleInBoth(page)).toEqual([]);
    await dialog.getByRole('button', { name: 'Leave it as it is' }).click();
    await page.getByText('Usable width of the cloth').waitFor();
    expect(await panel().getByLabel('Usable width of the cloth').inputValue()).toBe('40');
    await panel().getByText('Centimetres', { exact: true }).click();
    await dialog.getByRole('button', { name: 'Measure in centimetres' }).click();
    await page.getByRole('button', { name: 'Undo: measure in centimetres' }).waitFor();
    await vi.waitFor(async () =>
      expect(await panel().getByLabel('Usable width of the cloth').inputValue()).toBe('100'),
    );
  });

  it.each(['Library', 'Block', 'Quilt', 'Cloth', 'Sewing', 'Pages'])('%s says nothing in inches', async (view) => {
    const { page } = one;
    await goTo(page, view);
    await page.getByText(/ cm/).first().waitFor({ state: 'attached' });
    await vi.waitFor(async () => expect(await inchWords()).toEqual([]), { timeout: 20_000, interval: 500 });
  });

  it.each(['Charts', 'Cutting', 'Fabrics', 'Bundle', 'Finishing', 'Kits'])('nor does %s of the cloth', async (part) => {
    const { page } = one;
    await goTo(page, 'Cloth');
    await page.getByText(part, { exact: true }).first().click();
    await vi.waitFor(async () => expect(await inchWords()).toEqual([]), { timeout: 20_000, interval: 500 });
  });

  it('nor the panels of the quilt, and a width may be typed in either unit', async () => {
    const { page } = one;
    await goTo(page, 'Quilt');
    for (const row of [/^Straight/, /^Motif/, /^Lap/, /^Quay border/]) {
      await panel().getByRole('button', { name: row }).first().click();
      await panel().getByRole('button', { name: 'The whole quilt' }).waitFor();
      expect(await inchWords()).toEqual([]);
      if (String(row) !== '/^Quay border/') await panel().getByRole('button', { name: 'The whole quilt' }).click();
    }
    const width = panel().getByLabel('Finished width', { exact: true });
    expect(await width.inputValue()).toBe('10');
    await width.fill('2 1/2 in');
    await width.press('Enter');
    await page.getByRole('button', { name: 'Undo: make the quay border 6.35 cm' }).waitFor();
    expect(await width.inputValue()).toBe('6.35');
    await width.press('ArrowUp');
    expect(await width.inputValue()).toBe('6.85');
    await width.fill('75mm');
    await width.press('Enter');
    await page.getByRole('button', { name: 'Undo: make the quay border 7.5 cm' }).waitFor();
    await width.fill('wide');
    await panel()
      .getByText(/^Write centimetres, such as 21 or 21\.5/)
      .waitFor();
    await width.press('Escape');
  });

  it('nor the finder, whose numbers are round on the ruler', async () => {
    const { page } = one;
    await panel().getByRole('button', { name: 'The whole quilt' }).click();
    await panel().getByRole('button', { name: 'Find a size' }).click();
    const dialog = page.getByRole('dialog', { name: 'Find a size' });
    expect(await dialog.getByLabel('Drop').inputValue()).toBe('30');
    await dialog.getByText('Two measures').click();
    expect(await dialog.getByLabel('Width').inputValue()).toBe('150');
    await dialog.getByRole('button', { name: 'Find sizes' }).click();
    await dialog
      .getByRole('button', { name: /^Add as a size/ })
      .first()
      .waitFor();
    expect(await inchWords()).toEqual([]);
    await dialog
      .getByRole('button', { name: /^Add as a size/ })
      .first()
      .click();
    await page
      .getByRole('button', { name: /150 × 200 cm/ })
      .first()
      .waitFor();
  });
});
