// Builds the window and its host when what is built is missing or older than its sources; otherwise does nothing.
// `npm start` runs this first.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { globSync, mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';

const sources = ['src/**/*', 'resources/fonts/*', '*.config.ts', 'package-lock.json'];

/** What the sources under a folder look like now: changes when a file is written, added or removed. */
export function lookOf(folder: string): string {
  const look = createHash('sha256');
  for (const file of globSync(sources, { cwd: folder }).sort()) {
    const { size, mtimeMs } = statSync(join(folder, file));
    look.update(`${file} ${size} ${mtimeMs}\n`);
  }
  return look.digest('hex');
}

/** Whether what is built was built from sources that look like this. */
export function isFresh(folder: string, look: string): boolean {
  try {
    return readFileSync(join(folder, 'out/built-from'), 'utf8') === look;
  } catch {
    return false;
  }
}

/** Remembers that what is built was built from sources that look like this. */
export function markFresh(folder: string, look: string): void {
  mkdirSync(join(folder, 'out'), { recursive: true });
  writeFileSync(join(folder, 'out/built-from'), look);
}

if (import.meta.main) {
  const project = resolve(import.meta.dirname, '..');
  const look = lookOf(project);
  if (!isFresh(project, look)) {
    console.log('Building the studio …');
    const program = join(project, 'node_modules/electron-vite/bin/electron-vite.js');
    const { status } = spawnSync(process.execPath, [program, 'build', '--logLevel', 'warn'], {
      cwd: project,
      stdio: 'inherit',
    });
    if (status === 0) markFresh(project, look);
    process.exitCode = status ?? 1;
  }
}
