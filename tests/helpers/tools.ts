import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';
import { describe, it } from 'vitest';
import { findBrowser } from './browser.ts';

/** What a machine needs for a tool: Debian's package that brings it. */
const packageOf = {
  chromium: 'chromium-headless-shell',
  qpdf: 'qpdf',
  pdftotext: 'poppler-utils',
  pdffonts: 'poppler-utils',
  pdftoppm: 'poppler-utils',
  pdfinfo: 'poppler-utils',
} as const;

/** A program that some tests need beyond npm. */
export type Tool = keyof typeof packageOf;

/** Where the tool is, or nothing. The browser may also come out of an npm package. */
export function findTool(tool: Tool): string | undefined {
  if (tool === 'chromium') return findBrowser()?.name;
  return (process.env.PATH ?? '')
    .split(delimiter)
    .map((folder) => join(folder, tool))
    .find(canRun);
}

function canRun(file: string): boolean {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** Where the tool is; throws with what to install when it is missing. */
export function requireTool(tool: Tool): string {
  const found = findTool(tool);
  if (!found) throw new Error(`${tool} is missing: install ${packageOf[tool]}`);
  return found;
}

/**
 * A `describe` for tests that need these tools. Where one is missing the suite is skipped under a name that says what
 * would un-skip it; with CI=true it fails instead, because there everything must really run.
 */
export function describeWithTool(tools: Tool | readonly Tool[], name: string, body: () => void): void {
  const missing = [tools].flat().filter((tool) => !findTool(tool));
  if (missing.length === 0) {
    describe(name, body);
    return;
  }
  const needed = `install ${[...new Set(missing.map((tool) => packageOf[tool]))].join(' and ')} to run this`;
  if (process.env.CI === 'true') {
    describe(name, () => {
      it('has the tools it needs', () => {
        throw new Error(`${missing.join(', ')} missing: ${needed}`);
      });
    });
    return;
  }
  describe.skip(`${name} (skipped: ${needed})`, body);
}
