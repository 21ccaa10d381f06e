import type { Finding } from '../../shared/measure/finding.ts';
import { type Reading, readPatternText, readRecipeText } from '../../shared/pattern/load.ts';
import type { Pattern } from '../../shared/pattern/schema.ts';
import type { Recipe } from '../../shared/recipe/schema.ts';
import { Refused } from '../refusal.ts';
import { starterFiles } from '../store/starters.ts';
import { lineOf } from './place.ts';
import { resources } from './program.ts';
import { besideOf, readSource, type Source } from './source.ts';

/** A pattern and the file it came from. */
export interface OpenPattern {
  readonly source: Source;
  readonly pattern: Pattern;
}

/**
 * A pattern from a file, with every recipe it needs.
 * @throws Refused naming the file and the place in it
 */
export function openPattern(path: string): OpenPattern {
  const source = readSource(path);
  const around = { starters: starterRecipes(), beside: besideOf(path) };
  return { source, pattern: taken(source, readPatternText(source.text, around)) };
}

/** The recipes that come with the program. */
export function starterRecipes(): readonly Recipe[] {
  return starterFiles(resources()).recipes.map(({ name, text }) => taken({ path: name, text }, readRecipeText(text)));
}

/** What a file was read as, or a refusal that names the file, the line and what is wrong there. */
export function taken<T>(source: Source, reading: Reading<T>): T {
  if (reading.ok) return reading.value;
  throw new Refused('bad-input', refusalWords(source, reading.findings), reading.findings);
}

const MOST_TOLD = 8;

function refusalWords({ path, text }: Source, findings: readonly Finding[]): string {
  const told = findings.slice(0, MOST_TOLD).map(({ what, mend, where }) => {
    const line = lineOf(text, where.path);
    const words = mend === undefined ? what : `${what} ${mend}`;
    return `${path}${line === null ? '' : `, line ${line}`}: ${words}`;
  });
  const more = findings.length - told.length;
  return more > 0 ? `${told.join('\n')}\nAnd ${more} more.` : told.join('\n');
}
