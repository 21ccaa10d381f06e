import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';

export const project = resolve(import.meta.dirname, '../..');

/** A temporary folder that sees the project's packages, holds these files, and is gone after `remove`. */
export function makeTree(files: Readonly<Record<string, string>>): { folder: string; remove: () => void } {
  const folder = mkdtempSync(join(tmpdir(), 'piecewright-walls-'));
  symlinkSync(join(project, 'node_modules'), join(folder, 'node_modules'), 'dir');
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  return { folder, remove: () => rmSync(folder, { recursive: true, force: true }) };
}
