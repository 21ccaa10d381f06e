import { readdirSync, readFileSync } from 'node:fs';
import { readPatternText } from '../../src/shared/pattern/load.ts';
import type { Pattern } from '../../src/shared/pattern/schema.ts';
import { type Recipe, recipeSchema } from '../../src/shared/recipe/schema.ts';

const resources = new URL('../../resources/', import.meta.url);

/** Every starter recipe that ships with the studio. */
export function starterRecipes(): readonly Recipe[] {
  const folder = new URL('recipes/', resources);
  const files = readdirSync(folder).filter((name) => name.endsWith('.recipe.json'));
  return files.map((name) => recipeSchema.parse(JSON.parse(readFileSync(new URL(name, folder), 'utf8'))));
}

/** A demo pattern with the recipes it needs, as the studio opens it. */
export function demoPattern(name = 'harbour-lights'): Pattern {
  const text = readFileSync(new URL(`demo/${name}.pattern.json`, resources), 'utf8');
  const read = readPatternText(text, { starters: starterRecipes(), beside: () => null });
  if (!read.ok) throw new Error(read.findings.map(({ what }) => what).join(' '));
  return read.value;
}

/** A recipe by its id. */
export function starter(id: string): Recipe {
  const recipe = starterRecipes().find((one) => one.id === id);
  if (recipe === undefined) throw new Error(`There is no starter recipe “${id}”`);
  return recipe;
}

/** Every starter recipe by its id. */
export function starterBook(): ReadonlyMap<string, Recipe> {
  return new Map(starterRecipes().map((recipe) => [recipe.id, recipe]));
}
