import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { promisify } from 'node:util';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { startHost } from '../../src/main/host/server.ts';
import { openService } from '../../src/main/openService.ts';

const run = promisify(execFile);
const project = resolve(import.meta.dirname, '../..');

/** The built window in a folder of its own, and how to take it away again. */
export async function buildWindow(): Promise<{ readonly folder: string; remove(): void }> {
  const folder = mkdtempSync(join(tmpdir(), 'piecewright-window-'));
  // Built as it is for designers: some packages behave otherwise when they believe that they are tested.
  const env = { ...process.env, NODE_ENV: 'production' };
  const vite = join(project, 'node_modules/vite/bin/vite.js');
  const built = [vite, 'build', '--config', 'vite.renderer.config.ts', '--outDir', folder, '--emptyOutDir'];
  await run(process.execPath, [...built, '--logLevel', 'error'], { cwd: project, env });
  return { folder, remove: () => rmSync(folder, { recursive: true, force: true }) };
}

/** A studio as a designer has it: her own data folder, the real service, the real host. */
export interface OpenStudio {
  readonly address: string;
  close(): Promise<void>;
}

/** Starts the real host on a data folder, as `npm start` does for a browser. */
export async function openStudio(files: string, home: string): Promise<OpenStudio> {
  const before = process.env.PIECEWRIGHT_HOME;
  process.env.PIECEWRIGHT_HOME = home;
  const report = (error: unknown) => console.error(error);
  const service = openService('browser', report);
  if (before === undefined) delete process.env.PIECEWRIGHT_HOME;
  else process.env.PIECEWRIGHT_HOME = before;
  const host = await startHost({ service, files, port: 0, report });
  return {
    address: host.address,
    close: async () => {
      await host.close();
      await service.close();
    },
  };
}

export interface Visit {
  readonly page: Page;
  readonly context: BrowserContext;
  /** What the page complained of: a test ends with none. */
  readonly complaints: readonly string[];
}

/** Opens the studio in a fresh browser profile of this appearance. */
export async function visit(
  browser: Browser,
  address: string,
  colorScheme: 'light' | 'dark' = 'light',
): Promise<Visit> {
  const context = await browser.newContext({
    viewport: { width: 1280, height: 720 },
    colorScheme,
    reducedMotion: 'reduce',
    acceptDownloads: true,
  });
  const page = await context.newPage();
  page.setDefaultTimeout(30_000);
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(String(error)));
  page.on('console', (message) => {
    // The browser logs every answer of 400 and more; a refusal of the host is an answer like any other.
    const refused = message.text().startsWith('Failed to load resource');
    if (message.type() === 'error' && !refused) complaints.push(message.text());
  });
  page.on('response', (response) => {
    const { pathname } = new URL(response.url());
    if (response.status() >= 400 && !pathname.startsWith('/call/')) complaints.push(`${response.status()} ${pathname}`);
  });
  await page.goto(address);
  await page
    .getByText(/^Fits in/)
    .first()
    .waitFor();
  return { page, context, complaints };
}

/** Goes to a stage by its word in the way through the pattern. */
export async function goTo(page: Page, word: string): Promise<void> {
  await page
    .getByRole('navigation', { name: 'The way through the pattern' })
    .getByRole('button', { name: word })
    .click();
}
