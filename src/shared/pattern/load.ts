import { accept, type Finding } from '../measure/finding.ts';
import type { Recipe } from '../recipe/schema.ts';
import { pathText } from './issues.ts';
import {
  isRecord,
  PATTERN,
  parse,
  RECIPE,
  RECIPES,
  type Reading,
  readText,
  readValue,
  stops,
  wrong,
} from './reading.ts';
import { gatherRecipes, type Surroundings } from './recipes.ts';
import type { Pattern } from './schema.ts';

export type { Reading } from './reading.ts';

/**
 * A pattern from the text of a file, with every recipe it needs put inside.
 * @param text the whole file
 * @param around starter recipes, and a way to read recipe files that lie beside this one
 * @returns the pattern, or what is wrong with the file and where
 */
export function readPatternText(text: string, around: Surroundings): Reading<Pattern> {
  const read = readText(text, PATTERN);
  if (!read.ok) return read;
  const recipes = gatherRecipes(read.value, around, (beside) => readRecipeText(beside));
  return recipes.ok ? accept({ ...read.value, recipes: recipes.value }) : wrong(recipes.findings);
}

/** A recipe from the text of a file, or what is wrong with it and where. */
export function readRecipeText(text: string): Reading<Recipe> {
  return readText(text, RECIPE);
}

/**
 * The recipes from the text of a file that holds one recipe, a list of them, or a file of recipes; or everything that is
 * wrong with it, each with its recipe's name and its place. Of a file that is wrong anywhere, nothing is taken.
 */
export function readRecipesText(text: string): Reading<readonly Recipe[]> {
  const parsed = parse(text);
  if (!parsed.ok) return wrong(parsed.findings);
  const { value } = parsed;
  if (Array.isArray(value)) return readEach(value, []);
  if (isRecord(value) && value.format === RECIPES.format) {
    const file = readValue(value, RECIPES);
    return file.ok ? readEach(file.value.recipes, ['recipes']) : file;
  }
  const one = readValue(value, RECIPE);
  return one.ok ? accept([one.value]) : one;
}

function readEach(values: readonly unknown[], at: readonly string[]): Reading<readonly Recipe[]> {
  const read = values.map((value, index) => {
    const one = readValue(value, RECIPE, [...at, index]);
    return one.ok ? one : { ...one, findings: one.findings.map((finding) => named(finding, value)) };
  });
  const refused = read.filter((one) => !one.ok);
  const newer = refused.some((one) => one.newer);
  if (refused.length > 0)
    return wrong(
      refused.flatMap(({ findings }) => findings),
      newer,
    );
  const recipes = read.flatMap((one) => (one.ok ? [one.value] : []));
  const twice = sameIds(recipes, at);
  return twice.length > 0 ? wrong(twice) : accept(recipes);
}

/** A finding told with the name of the recipe it is about, if it has one. */
function named(finding: Finding, value: unknown): Finding {
  const name = isRecord(value) ? value.name : undefined;
  return typeof name === 'string' && name.trim() !== '' ? { ...finding, what: `“${name}”: ${finding.what}` } : finding;
}

/** Recipes hold one another by their ids, so two of one id in a file cannot be told apart. */
function sameIds(recipes: readonly Recipe[], at: readonly string[]): readonly Finding[] {
  const ids = recipes.map(({ id }) => id);
  return recipes.flatMap(({ id, name }, index) =>
    ids.indexOf(id) === index
      ? []
      : [stops(`“${name}”: the id “${id}” is given twice in this file.`, pathText([...at, index, 'id']))],
  );
}

/** Which kind of document a text says it is; null when it is no JSON or says nothing we know. A list is taken for recipes. */
export function kindOfText(text: string): 'pattern' | 'recipe' | 'recipes' | null {
  const parsed = parse(text);
  if (!parsed.ok) return null;
  if (Array.isArray(parsed.value)) return parsed.value.some(saysRecipe) ? 'recipes' : null;
  const format = isRecord(parsed.value) ? parsed.value.format : undefined;
  if (format === PATTERN.format) return 'pattern';
  if (format === RECIPES.format) return 'recipes';
  return format === RECIPE.format ? 'recipe' : null;
}

function saysRecipe(value: unknown): boolean {
  return isRecord(value) && value.format === RECIPE.format;
}
