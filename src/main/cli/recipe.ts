import { kindOfText, readRecipesText } from '../../shared/pattern/load.ts';
import type { Recipe } from '../../shared/recipe/schema.ts';
import { EXIT } from './exit.ts';
import { findingsText } from './findings.ts';
import { jsonText } from './json.ts';
import { starterRecipes, taken } from './open.ts';
import { type RecipeFacts, recipeFacts } from './recipeFacts.ts';
import { recipeText } from './recipeText.ts';
import { readSource, type Source } from './source.ts';
import type { Terminal } from './terminal.ts';

interface Read {
  readonly source: Source;
  readonly recipes: readonly Recipe[];
}

interface Told extends RecipeFacts {
  readonly source: Source;
  /** Where the recipe stands in its file. */
  readonly at: string;
}

/**
 * `piecewright recipe FILE…`: the units, seams and cut sizes of every recipe. The files are one library: a recipe may
 * hold another of them, or a starter.
 */
export function runRecipe(files: readonly string[], json: boolean, terminal: Terminal): number {
  const read = files.map((file): Read => {
    const source = readSource(file);
    return { source, recipes: taken(source, readRecipesText(source.text)) };
  });
  const own = read.flatMap(({ recipes }) => recipes);
  const library = [...own, ...starterRecipes().filter(({ id }) => !own.some((recipe) => recipe.id === id))];
  const told = read.flatMap(({ source, recipes }) =>
    recipes.map((recipe, i): Told => {
      const at = placeIn(source, i);
      return { ...recipeFacts(recipe, library), source, at };
    }),
  );
  terminal.say(json ? jsonText({ recipes: told.map(asJson) }) : told.map(asText).join('\n\n\n'));
  return told.some(({ findings }) => findings.some(({ level }) => level === 'stops')) ? EXIT.findings : EXIT.fine;
}

/** Where a recipe stands in its file: in a list, in a file of recipes, or by itself. */
function placeIn({ text }: Source, index: number): string {
  if (text.trimStart().startsWith('[')) return `[${index}]`;
  return kindOfText(text) === 'recipes' ? `recipes[${index}]` : '';
}

function asJson({ source, at: _at, ...facts }: Told): object {
  return { file: source.path, ...facts };
}

function asText({ source, at, findings, ...facts }: Told): string {
  const placed = findings.map((finding) => {
    const path = [at, finding.where.path].filter((part) => part !== '').join('.');
    return { ...finding, where: { ...finding.where, path } };
  });
  const words = findingsText(placed, source);
  return words === '' ? recipeText(facts) : `${recipeText(facts)}\n\n${words}`;
}
