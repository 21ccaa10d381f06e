import { accept, type Finding, type Maybe } from '../measure/finding.ts';
import type { Cell, Recipe } from '../recipe/schema.ts';
import type { PatternFile } from './schema.ts';

/** What lies around a file when it is read. */
export interface Surroundings {
  /** Recipes that come with the studio. */
  readonly starters: readonly Recipe[];
  /** The text of a file beside this one; null when there is none or none may be read. */
  readonly beside: (name: string) => string | null;
}

/** A file with nothing around it. */
export const ALONE: Surroundings = { starters: [], beside: () => null };

type ReadRecipe = (text: string) => Maybe<Recipe>;

/**
 * Every recipe a pattern needs and no other starter: those written in it, those in files beside it, and the starters that
 * its blocks and its recipes name. A recipe of the pattern's own goes before a starter of the same id.
 */
export function gatherRecipes(file: PatternFile, around: Surroundings, read: ReadRecipe): Maybe<readonly Recipe[]> {
  const findings: Finding[] = [];
  const own = file.recipes.flatMap((entry, index) => {
    if (!('file' in entry)) return [entry];
    const recipe = fromFile(entry.file, `recipes[${index}].file`, around, read);
    if (!recipe.ok) findings.push(...recipe.findings);
    return recipe.ok ? [recipe.value] : [];
  });
  if (findings.length > 0) return { ok: false, findings };
  const named = file.blocks.map(({ recipe }) => recipe);
  return accept([...own, ...startersNeeded(own, named, around.starters)]);
}

function fromFile(name: string, path: string, around: Surroundings, read: ReadRecipe): Maybe<Recipe> {
  // Only files of the same folder: a pattern somebody was sent must not reach about on her disk.
  const text = /[\\/]|^\.\.?$/.test(name) ? null : around.beside(name);
  if (text === null) {
    const mend =
      'Put the recipe file into the same folder, or choose it along with the pattern, or write the recipe into the pattern.';
    return {
      ok: false,
      findings: [{ level: 'stops', what: `There is no file “${name}” beside this pattern.`, where: { path }, mend }],
    };
  }
  const recipe = read(text);
  if (recipe.ok) return recipe;
  const findings = recipe.findings.map((finding) => ({
    ...finding,
    what: `In ${name}: ${finding.what}`,
    where: { path },
  }));
  return { ok: false, findings };
}

/** The ids of the recipes that a recipe holds directly. */
export function heldBy(recipe: Recipe): readonly string[] {
  const { body } = recipe;
  if (body.kind === 'drawing') return [];
  const cells = body.kind === 'grid' ? Object.values(body.key) : [body.core];
  return cells.flatMap((cell) => ('recipe' in cell ? [cell.recipe] : []));
}

/** The recipe with the recipes it holds under other ids. */
export function withHeldIds(recipe: Recipe, renamed: (id: string) => string): Recipe {
  const { body } = recipe;
  if (body.kind === 'drawing' || heldBy(recipe).every((id) => renamed(id) === id)) return recipe;
  const cell = (one: Cell): Cell => ('recipe' in one ? { ...one, recipe: renamed(one.recipe) } : one);
  if (body.kind === 'rounds') return { ...recipe, body: { ...body, core: cell(body.core) } };
  const key = Object.fromEntries(Object.entries(body.key).map(([name, one]) => [name, cell(one)]));
  return { ...recipe, body: { ...body, key } };
}

/** The starters that are named, directly or through others, and are not among the pattern's own. */
function startersNeeded(
  own: readonly Recipe[],
  named: readonly string[],
  starters: readonly Recipe[],
): readonly Recipe[] {
  const found = new Map(own.map((recipe) => [recipe.id, recipe]));
  const needed: Recipe[] = [];
  const open = [...named, ...own.flatMap(heldBy)];
  for (let id = open.pop(); id !== undefined; id = open.pop()) {
    const starter = found.has(id) ? undefined : starters.find((recipe) => recipe.id === id);
    if (starter === undefined) continue;
    found.set(id, starter);
    needed.push(starter);
    open.push(...heldBy(starter));
  }
  return needed;
}

/** A recipe with every recipe it holds, directly or through others, found in `library`; those missing are left out. */
export function withHeld(recipe: Recipe, library: readonly Recipe[]): readonly Recipe[] {
  return [recipe, ...startersNeeded([recipe], [], library)];
}
