import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { freshPattern } from '../../src/shared/pattern/fresh.ts';
import type { Pattern } from '../../src/shared/pattern/schema.ts';
import { lower } from '../../src/shared/piecing/lower.ts';
import { drawnBody } from '../../src/shared/recipe/drawn.ts';
import { buildWindow, openStudio, visit } from '../e2e/openStudio.ts';
import { launchBrowser } from '../helpers/browser.ts';
import { starterRecipes } from '../helpers/starters.ts';
import { inSizes, shapeOf, shapes } from './growing.ts';
import type { Row } from './row.ts';

/** In the page: a heart that beats as often as it can, and how long it once stood still. */
const HEART = `(() => {
  let last = performance.now(), longest = 0;
  const { port1, port2 } = new MessageChannel();
  port1.onmessage = () => {
    const now = performance.now();
    longest = Math.max(longest, now - last);
    last = now;
    setTimeout(() => port2.postMessage(0), 0);
  };
  port2.postMessage(0);
  window.stoodStill = () => { const was = longest; longest = 0; return was; };
})()`;

const EDITS = 9;

/** The longest the window stands still, in the middle of several edits, each with all that follows from it. */
async function standsStill(pattern: Pattern, edit: (page: Page) => Promise<void>): Promise<number> {
  const home = mkdtempSync(join(tmpdir(), 'piecewright-bench-'));
  const [built, browser] = await Promise.all([buildWindow(), launchBrowser()]);
  const studio = await openStudio(built.folder, home);
  try {
    const { page } = await visit(browser, studio.address);
    await page.addInitScript(HEART);
    await openOn(page, pattern);
    await edit(page);
    const stood: number[] = [];
    for (let i = 0; i < EDITS; i++) {
      await page.evaluate('stoodStill()');
      await edit(page);
      stood.push(Number(await page.evaluate('stoodStill()')));
    }
    return stood.sort((a, b) => a - b)[(EDITS - 1) / 2] ?? Number.NaN;
  } finally {
    await browser.close();
    await studio.close();
    built.remove();
    rmSync(home, { recursive: true, force: true });
  }
}

/** Brings the pattern in and opens it in one of the views. */
export async function openOn(page: Page, pattern: Pattern, view = 'block'): Promise<void> {
  const text = JSON.stringify({ ...pattern, id: 'large' });
  await page.evaluate(
    async (file) => {
      const call = async (name: string, arg: unknown) => {
        const body = JSON.stringify([arg]);
        const answer = await fetch(`/call/${name}`, {
          method: 'POST',
          headers: { 'content-type': 'application/json' },
          body,
        });
        return answer.json();
      };
      const { value } = await call('importFile', file);
      await call('openPattern', value.id);
    },
    { name: 'large.pattern.json', text },
  );
  await page.evaluate((hash) => {
    window.location.hash = hash;
  }, view);
  await page.reload();
  await page
    .getByText(/^(Fits|Does not fit)/)
    .first()
    .waitFor({ timeout: 120_000 });
}

/** Until what follows from the last act stands on the screen. */
async function settled(page: Page): Promise<void> {
  await page.locator('#fit[aria-busy=false]').waitFor({ timeout: 120_000 });
  await page.waitForTimeout(700);
}

async function turnUnit(page: Page): Promise<void> {
  await page.getByRole('grid', { name: /^Units of block A/ }).focus();
  await page.keyboard.press('Home');
  await page.keyboard.press('r');
  await settled(page);
}

async function fillPatch(page: Page): Promise<void> {
  await page.getByLabel('Drawing of block A').focus();
  await page.keyboard.press('i');
  await page.keyboard.press('Enter');
  await settled(page);
}

/** A drawing of so many half-square triangles a side, half of them lying the other way, as the only block of a quilt. */
function drawnPattern(side: number): Pattern {
  const star = starterRecipes().find(({ id }) => id === 'broken-dishes');
  if (star === undefined) throw new Error('There is no starter to draw from');
  const body = {
    kind: 'grid' as const,
    columns: Array.from({ length: side }, () => 1),
    rows: Array.from({ length: side }, () => 1),
    key: { H: { unit: 'hst' as const, roles: [star.roles[0]?.id ?? '', star.roles[1]?.id ?? ''] as [string, string] } },
    layout: Array.from({ length: side }, (_, row) =>
      Array.from({ length: side }, (_, column) => ((row * 7 + column * 3) % 4 < 2 ? 'H' : 'H:90')).join(' '),
    ),
  };
  const grid = { ...star, id: 'large-drawing', body };
  const lowered = lower(grid, {}, new Map(), '');
  if (!lowered.ok) throw new Error('The drawing cannot be made');
  const drawn = { ...grid, finished: side, body: drawnBody(lowered.value.drawing) };
  return freshPattern(drawn, [], { id: 'large', title: 'Large', designer: 'Saltmarsh & Thread', date: '2026-01-01' });
}

export const rows: readonly Row[] = [
  {
    what: 'the window stands still for an edit, 5 sizes, 16,000 patches in the largest, at the longest',
    budget: 50,
    measure: () => standsStill(inSizes([...shapes, shapeOf(16_000)]), turnUnit),
  },
  {
    what: 'the window stands still for an edit of a drawing of 200 patches, at the longest',
    budget: 50,
    measure: () => standsStill(drawnPattern(10), fillPatch),
  },
];
