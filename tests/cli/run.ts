import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';
import { runCli } from '../../src/main/cli/runCli.ts';

/** What a command said and how it ended. */
export interface Ran {
  readonly code: number;
  readonly said: string;
  readonly complained: string;
}

/** Runs a command line in this process. */
export function run(...args: string[]): Promise<Ran> {
  return runIn(100, ...args);
}

/** Runs a command line in a terminal so many letters wide. */
export async function runIn(width: number, ...args: string[]): Promise<Ran> {
  const said: string[] = [];
  const complained: string[] = [];
  const code = await runCli(args, {
    width,
    say: (text) => said.push(text),
    complain: (text) => complained.push(text),
  });
  return { code, said: said.join('\n'), complained: complained.join('\n') };
}

/** A folder for the tests of one file, gone after them. */
export function folderForTests(): string {
  const folder = mkdtempSync(join(tmpdir(), 'piecewright-cli-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

const resources = join(import.meta.dirname, '../../resources');

export const DEMO = join(resources, 'demo/harbour-lights.pattern.json');

export function starterFile(id: string): string {
  return join(resources, 'recipes', `${id}.recipe.json`);
}
