import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  interface ProvidedContext {
    /** A folder for this run alone, for what several test files build once. */
    readonly runFolder: string;
  }
}

/** Gives a run its folder, and takes it away after the last test. */
export default function setup({ provide }: TestProject): () => void {
  const folder = mkdtempSync(join(tmpdir(), 'piecewright-run-'));
  provide('runFolder', folder);
  return () => rmSync(folder, { recursive: true, force: true });
}
