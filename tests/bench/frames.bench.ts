import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { buildWindow, openStudio, visit } from '../e2e/openStudio.ts';
import { launchBrowser } from '../helpers/browser.ts';
import { inSizes } from './growing.ts';
import type { Row } from './row.ts';
import { openOn } from './window.bench.ts';

/** In the page: how long every frame took since it was last asked. */
const FRAMES = `(() => {
  let last = performance.now(), frames = [];
  const beat = (now) => { frames.push(now - last); last = now; requestAnimationFrame(beat); };
  requestAnimationFrame(beat);
  window.framesSince = () => { const was = frames; frames = []; return was; };
})()`;

/** A hand that zooms in to a few blocks, moves about there, and zooms out again. */
async function lookAbout(page: Page): Promise<void> {
  const box = await page.getByRole('grid', { name: /^Blocks of the quilt/ }).boundingBox();
  if (box === null) throw new Error('The quilt is not on screen');
  await page.mouse.move(box.x + box.width * 0.6, box.y + box.height * 0.4);
  const wheel = async (times: number, across: number, down: number) => {
    for (let i = 0; i < times; i++) {
      await page.mouse.wheel(across, down);
      await page.waitForTimeout(16);
    }
  };
  await page.keyboard.down('Control');
  await wheel(24, 0, -24);
  await page.keyboard.up('Control');
  await wheel(30, 12, 8);
  await wheel(30, -16, -6);
  await page.keyboard.down('Control');
  await wheel(24, 0, 24);
  await page.keyboard.up('Control');
}

/** How long frames take while 400 blocks of about 40 patches are looked about in, the shortest first. */
async function framesWhileLooking(): Promise<readonly number[]> {
  const home = mkdtempSync(join(tmpdir(), 'piecewright-bench-'));
  const [built, browser] = await Promise.all([buildWindow(), launchBrowser()]);
  const studio = await openStudio(built.folder, home);
  try {
    const { page } = await visit(browser, studio.address);
    await page.addInitScript(FRAMES);
    await openOn(page, inSizes([[20, 20]]), 'quilt');
    await page.getByRole('grid', { name: /^Blocks of the quilt/ }).waitFor({ timeout: 60_000 });
    await page.waitForTimeout(1500);
    await lookAbout(page);
    await page.evaluate('framesSince()');
    await lookAbout(page);
    const frames = (await page.evaluate('framesSince()')) as number[];
    return frames.sort((a, b) => a - b);
  } finally {
    await browser.close();
    await studio.close();
    built.remove();
    rmSync(home, { recursive: true, force: true });
  }
}

let measured: Promise<readonly number[]> | null = null;

/** The frame that so large a share of all are no longer than. */
async function frameAt(share: number): Promise<number> {
  measured ??= framesWhileLooking();
  const frames = await measured;
  return frames[Math.floor((frames.length - 1) * share)] ?? Number.NaN;
}

const WHAT = 'a frame while 400 blocks of 40 patches are panned and zoomed';

export const rows: readonly Row[] = [
  { what: `${WHAT}, mostly`, budget: 17, measure: () => frameAt(0.5) },
  { what: `${WHAT}, 19 of 20`, budget: 34, measure: () => frameAt(0.95) },
];
