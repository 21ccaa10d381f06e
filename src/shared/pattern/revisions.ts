import type { Recipe } from '../recipe/schema.ts';
import type { Pattern } from './schema.ts';

/**
 * How a recipe that a pattern carries stands to the library's. 'same': they are alike. 'newer': the library has a revision
 * that the pattern has not. 'own': the pattern has changed its recipe, and the library's has not moved on since. 'apart':
 * they differ, and the pattern does not say which revision it was made with.
 */
export type Standing = 'same' | 'newer' | 'own' | 'apart';

/**
 * How the recipe a pattern carries stands to the one of the same id in the library.
 * @param revision the library's newest
 * @returns null when the pattern carries no recipe of that id
 */
export function standingOf(pattern: Pattern, recipe: Recipe, revision: number): Standing | null {
  const carried = pattern.recipes.find(({ id }) => id === recipe.id);
  if (carried === undefined) return null;
  if (isAlike(carried, recipe)) return 'same';
  const madeWith = pattern.revisions?.[recipe.id];
  if (madeWith === undefined) return 'apart';
  return madeWith >= revision ? 'own' : 'newer';
}

/** Whether two recipes say the same, whatever the order of their entries' names. */
export function isAlike(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const [inA, inB] = [entriesOf(a), entriesOf(b)];
  return inA.size === inB.size && [...inA].every(([name, value]) => inB.has(name) && isAlike(value, inB.get(name)));
}

/** An entry that is left out and one that is undefined are the same in a file. */
function entriesOf(value: object): ReadonlyMap<string, unknown> {
  return new Map(Object.entries(value).filter(([, entry]) => entry !== undefined));
}

/** The pattern with the revisions of these recipes noted, as far as they are known. */
export function withRevisions(
  pattern: Pattern,
  recipes: readonly Recipe[],
  revisions: Readonly<Record<string, number>>,
): Pattern {
  const known = recipes.flatMap(({ id }) => (revisions[id] === undefined ? [] : [[id, revisions[id]] as const]));
  if (known.every(([id, revision]) => pattern.revisions?.[id] === revision)) return pattern;
  return { ...pattern, revisions: { ...pattern.revisions, ...Object.fromEntries(known) } };
}
