import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, vi } from 'vitest';
import { launchBrowser } from '../helpers/browser.ts';
import { builtWindow } from '../helpers/builtWindow.ts';
import { type OpenStudio, openStudio, type Visit, visit } from './openStudio.ts';

/** The studio that a test sits in. Read its parts inside a test: each test has its own. */
export interface InStudio {
  readonly page: Page;
  readonly context: BrowserContext;
  /** Her data folder. */
  readonly home: string;
  readonly address: string;
  /** Closes the window and the studio, and opens both again on the same data folder. */
  again(): Promise<void>;
}

/**
 * Opens the studio in a browser for the tests of this suite: for every test a studio of its own, with a data folder
 * that is empty at first, or one for the whole suite, as in one sitting. No page may have complained when it is closed.
 */
export function inStudio(each: 'test' | 'suite' = 'test'): InStudio {
  const [before, after] = each === 'test' ? [beforeEach, afterEach] : [beforeAll, afterAll];
  // A browser on a machine with two busy cores takes its time.
  vi.setConfig({ testTimeout: 180_000 });
  let window: string;
  let browser: Browser;
  let home: string;
  let studio: OpenStudio;
  let visited: Visit;

  const open = async () => {
    studio = await openStudio(window, home);
    visited = await visit(browser, studio.address);
  };
  const close = async () => {
    await visited.context.close();
    await studio.close();
    expect(visited.complaints).toEqual([]);
  };

  beforeAll(async () => {
    [window, browser] = await Promise.all([builtWindow(), launchBrowser()]);
  });
  before(async () => {
    home = mkdtempSync(join(tmpdir(), 'piecewright-home-'));
    await open();
  });
  after(async () => {
    try {
      await close();
    } finally {
      rmSync(home, { recursive: true, force: true });
    }
  });
  afterAll(() => browser.close());

  return {
    get page() {
      return visited.page;
    },
    get context() {
      return visited.context;
    },
    get home() {
      return home;
    },
    get address() {
      return studio.address;
    },
    async again() {
      await close();
      await open();
    },
  };
}
