import type { Finding } from '../measure/finding.ts';
import type { Amount, Recipe } from '../recipe/schema.ts';
import type { Sub } from './sub.ts';

/** Finds a recipe by its id. */
export type RecipeBook = ReadonlyMap<string, Recipe>;

/** What lowering one recipe has to hand: its numbers, its roles as the whole block knows them, and where to complain. */
export interface Lowering {
  readonly book: RecipeBook;
  readonly recipe: Recipe;
  readonly numbers: Readonly<Record<string, number>>;
  /** Each role of this recipe to a role of the outermost recipe. */
  readonly roles: Readonly<Record<string, string>>;
  /** Ids of the recipes being lowered, outermost first: a recipe must not hold itself. */
  readonly within: readonly string[];
  readonly path: string;
  /** What stops the lowering. */
  readonly findings: Finding[];
  /** What is worth knowing and stops nothing. */
  readonly notes: Finding[];
  /** Lowers the body of whatever recipe is in hand: recipes nest, so cells call back to where they came from. */
  readonly lowerBody: (on: Lowering) => Sub | null;
}

/** Notes what is wrong and where; lowering goes on so that everything wrong is told at once. */
export function complain(on: Lowering, what: string, where: string, mend?: string): void {
  const path = on.path === '' ? where : `${on.path}.${where}`;
  on.findings.push({ level: 'stops', what, where: { path }, ...(mend === undefined ? {} : { mend }) });
}

/** A number of grid units; null (with a complaint) when it names no parameter. */
export function amountOf(on: Lowering, amount: Amount, where: string): number | null {
  if (typeof amount === 'number') return amount;
  const value = on.numbers[amount];
  if (value !== undefined) return value;
  const known = on.recipe.parameters.map((parameter) => `“${parameter.id}”`).join(', ') || 'none';
  complain(on, `“${amount}” is not a parameter of “${on.recipe.name}”.`, where, `Its parameters are: ${known}.`);
  return null;
}

/** The outermost role a role stands for; null (with a complaint) when the recipe has no such role. */
export function roleOf(on: Lowering, role: string, where: string): string | null {
  const outer = on.roles[role];
  if (outer !== undefined) return outer;
  complain(on, `“${on.recipe.name}” has no fabric role “${role}”.`, where, `Add it to the recipe’s roles.`);
  return null;
}

/** The values of a recipe's parameters: those given, else their defaults; complains of unknown or out of range ones. */
export function numbersFor(
  recipe: Recipe,
  chosen: Readonly<Record<string, number>>,
  complaint: (what: string, where: string) => void,
): Readonly<Record<string, number>> {
  const known = new Map(recipe.parameters.map((parameter) => [parameter.id, parameter]));
  for (const id of Object.keys(chosen)) {
    if (!known.has(id)) complaint(`“${recipe.name}” has no parameter “${id}”.`, `parameters.${id}`);
  }
  return Object.fromEntries(
    recipe.parameters.map(({ id, name, default: usual, least, most }) => {
      const value = chosen[id] ?? usual;
      if (value < least || value > most) {
        complaint(`${name} of “${recipe.name}” is ${value}; it can be ${least} to ${most}.`, `parameters.${id}`);
      }
      return [id, value];
    }),
  );
}
