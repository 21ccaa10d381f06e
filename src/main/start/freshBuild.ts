import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { globSync, mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** The browser needs only the page; the desktop window also its own programs, built together with the page. */
export type Build = 'page' | 'window';

const SOURCES = ['src/**/*', 'resources/fonts/*', '*.config.ts', 'package-lock.json'];

const TOOLS: Readonly<Record<Build, readonly string[]>> = {
  page: ['node_modules/vite/bin/vite.js', 'build', '--config', 'vite.renderer.config.ts', '--logLevel', 'warn'],
  window: ['node_modules/electron-vite/bin/electron-vite.js', 'build', '--logLevel', 'warn'],
};

/**
 * Builds what is asked for when it is missing or older than its sources; answers what went wrong, or nothing. `program` is
 * the program's folder.
 */
export function freshBuild(program: string, wanted: Build, say: (line: string) => void): string | null {
  const look = lookOf(program);
  if (isFresh(program, wanted, look)) return null;
  say('Building the studio …');
  const [tool = '', ...words] = TOOLS[wanted];
  const made = spawnSync(process.execPath, [join(program, tool), ...words], { cwd: program, encoding: 'utf8' });
  if (made.status !== 0) {
    return `The studio could not be built. Is everything installed (npm ci)?\n${made.stdout}${made.stderr}`.trim();
  }
  markFresh(program, wanted, look);
  return null;
}

/** What the sources under a folder look like now: changes when a file is written, added or removed. */
export function lookOf(program: string): string {
  const look = createHash('sha256');
  for (const file of globSync(SOURCES, { cwd: program }).sort()) {
    const { size, mtimeMs } = statSync(join(program, file));
    look.update(`${file} ${size} ${mtimeMs}\n`);
  }
  return look.digest('hex');
}

/** Whether what is built was built from sources that look like this. */
export function isFresh(program: string, build: Build, look: string): boolean {
  try {
    statSync(join(program, 'out', 'renderer', 'index.html'));
    return readFileSync(markOf(program, build), 'utf8') === look;
  } catch {
    return false;
  }
}

/** Remembers that what is built was built from sources that look like this. */
export function markFresh(program: string, build: Build, look: string): void {
  mkdirSync(join(program, 'out'), { recursive: true });
  writeFileSync(markOf(program, 'page'), look);
  if (build === 'window') writeFileSync(markOf(program, 'window'), look);
}

function markOf(program: string, build: Build): string {
  return join(program, 'out', `${build}-built-from`);
}
