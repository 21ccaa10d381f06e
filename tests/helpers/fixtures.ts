import { readdirSync, readFileSync } from 'node:fs';
import { readPatternText } from '../../src/shared/pattern/load.ts';
import type { Pattern } from '../../src/shared/pattern/schema.ts';
import { starterRecipes } from './starters.ts';

const folder = new URL('../fixtures/patterns/', import.meta.url);

/** The test pattern of this name, as the studio opens it. */
export function testPattern(name: string): Pattern {
  const beside = (file: string) => readFileSync(new URL(file, folder), 'utf8');
  const read = readPatternText(beside(`${name}.pattern.json`), { starters: starterRecipes(), beside });
  if (!read.ok) throw new Error(`${name}: ${read.findings.map(({ what }) => what).join(' ')}`);
  return read.value;
}

/** The names of all test patterns. */
export function testPatternNames(): readonly string[] {
  const ending = '.pattern.json';
  return readdirSync(folder)
    .filter((name) => name.endsWith(ending))
    .map((name) => name.slice(0, -ending.length));
}
