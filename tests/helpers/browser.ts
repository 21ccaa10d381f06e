import { existsSync } from 'node:fs';
import { type Browser, chromium } from 'playwright-core';
import { canUnpackBrowser, unpackBrowser } from './packedBrowser.ts';

/** A browser that tests can drive: which one, and how to get at its program. */
export interface FoundBrowser {
  readonly name: string;
  /** The program, and what it needs in its environment; the packed one is unpacked on first use. */
  program(): { readonly executablePath: string; readonly env: Readonly<Record<string, string>> };
}

// The headless shell comes first: a whole Chromium also draws its own toolbars, unseen, and takes nearly twice as long.
const installed = ['/usr/bin/chromium-headless-shell', '/usr/bin/chromium', '/usr/bin/chromium-browser'];

/** The browser named by PIECEWRIGHT_CHROMIUM, else an installed one, else the one from npm, else nothing. */
export function findBrowser(): FoundBrowser | undefined {
  const named = process.env.PIECEWRIGHT_CHROMIUM;
  const file = named || installed.find((candidate) => existsSync(candidate));
  if (file) return { name: file, program: () => ({ executablePath: file, env: {} }) };
  return canUnpackBrowser() ? { name: 'Chromium from npm', program: unpackBrowser } : undefined;
}

/** Starts a browser without a window. The caller closes it. */
export async function launchBrowser(): Promise<Browser> {
  const found = findBrowser();
  if (!found)
    throw new Error(
      'a browser is missing: install chromium-headless-shell, or set PIECEWRIGHT_CHROMIUM to its program',
    );
  const { executablePath, env } = found.program();
  return chromium.launch({
    executablePath,
    env: { ...(process.env as Record<string, string>), ...env },
    // No sandbox, because tests may run as root; and no talk with anyone but the page under test.
    args: [
      ...['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--font-render-hinting=none'],
      ...['--disable-background-networking', '--disable-component-update', '--disable-sync'],
    ],
  });
}
