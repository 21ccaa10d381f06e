import type { Cloth } from '../cloth/cloth.ts';
import type { Finding } from '../measure/finding.ts';
import { type Ruler, rulerOn } from '../measure/ruler.ts';
import { type TakenRecipe, takeRecipe } from '../pattern/edits/takeRecipe.ts';
import type { Pattern } from '../pattern/schema.ts';
import { unitName } from '../piecing/unitNames.ts';
import type { Recipe } from '../recipe/schema.ts';
import type { WorkedOut, WorkedSize } from './workedOut.ts';
import { workOut } from './workOut.ts';

/** What taking another revision of a recipe would change in a pattern, in words. */
export interface RecipeUpdate {
  /** The pattern after it; the very same one when nothing would change. */
  readonly pattern: Pattern;
  /** What is true of every size: roles, parameters, units. */
  readonly recipe: readonly string[];
  /** One for each size that would change, in the pattern's order. */
  readonly sizes: readonly SizeUpdate[];
  /** Findings that would come and go. */
  readonly newFindings: readonly Finding[];
  readonly mended: readonly Finding[];
}

export interface SizeUpdate {
  readonly size: string;
  readonly changes: readonly string[];
}

/**
 * Works a pattern out before and after it takes another revision of a recipe, and says what would differ: finished sizes,
 * pieces to cut, yards, findings.
 * @param before the pattern as it is, worked out
 */
export function recipeUpdate(before: WorkedOut, taken: TakenRecipe): RecipeUpdate {
  const { pattern } = before;
  const next = takeRecipe.apply(pattern, taken);
  const after = next === pattern ? before : workOut(next);
  const carried = pattern.recipes.find(({ id }) => id === taken.recipe.id);
  return {
    pattern: next,
    recipe:
      carried === undefined ? [] : [...recipeChanges(carried, taken.recipe), ...unitChanges(before, after, taken)],
    sizes: pattern.sizes.flatMap(({ id, name }) => {
      const changes = sizeChanges(sizeOf(before, id), sizeOf(after, id), pattern);
      return changes.length === 0 ? [] : [{ size: name, changes }];
    }),
    newFindings: without(after.findings, before.findings),
    mended: without(before.findings, after.findings),
  };
}

function sizeOf(worked: WorkedOut, id: string): WorkedSize | undefined {
  return worked.sizes.find(({ size }) => size.id === id);
}

function without(findings: readonly Finding[], others: readonly Finding[]): readonly Finding[] {
  const known = new Set(others.map(({ what }) => what));
  return findings.filter(({ what }) => !known.has(what));
}

function recipeChanges(was: Recipe, now: Recipe): readonly string[] {
  return [
    ...(was.name === now.name ? [] : [`It is called ${now.name}, was ${was.name}.`]),
    ...listChanges(names(was.roles), names(now.roles), 'Fabric role'),
    ...listChanges(names(was.parameters), names(now.parameters), 'Parameter'),
  ];
}

function names(list: readonly { readonly name: string }[]): readonly string[] {
  return list.map(({ name }) => name);
}

function listChanges(was: readonly string[], now: readonly string[], what: string): readonly string[] {
  return [
    ...now.filter((name) => !was.includes(name)).map((name) => `${what} ${name} is new.`),
    ...was.filter((name) => !now.includes(name)).map((name) => `${what} ${name} is gone.`),
  ];
}

/** How many of each kind of unit one block takes, where that changes. */
function unitChanges(before: WorkedOut, after: WorkedOut, { recipe }: TakenRecipe): readonly string[] {
  const block = before.pattern.blocks.find((one) => one.recipe === recipe.id);
  if (block === undefined) return [];
  return tallyChanges(unitTally(before, block.id), unitTally(after, block.id)).map(
    ({ what, was, now }) => `${what} in block ${block.id}: ${many(now)}, was ${many(was)}.`,
  );
}

function unitTally({ sizes }: WorkedOut, id: string): Tally {
  const tally = new Map<string, number>();
  const units = sizes.flatMap(({ blocks }) => blocks.find((block) => block.id === id) ?? [])[0]?.units ?? [];
  for (const { unit, perBlock } of units) tally.set(unitName(unit), (tally.get(unitName(unit)) ?? 0) + perBlock);
  return tally;
}

function many(count: number): string {
  return count === 0 ? 'none' : String(count);
}

type Tally = ReadonlyMap<string, number>;

function tallyChanges(was: Tally, now: Tally): readonly { what: string; was: number; now: number }[] {
  return [...new Set([...now.keys(), ...was.keys()])].flatMap((what) => {
    const [before, after] = [was.get(what) ?? 0, now.get(what) ?? 0];
    return before === after ? [] : [{ what, was: before, now: after }];
  });
}

function sizeChanges(was: WorkedSize | undefined, now: WorkedSize | undefined, pattern: Pattern): readonly string[] {
  const ruler = rulerOn(pattern.house.step);
  if (was === undefined || now === undefined) {
    if (was === now) return [];
    return [now === undefined ? 'It can no longer be made.' : 'It can be made again.'];
  }
  const finished = ({ quilt: { root } }: WorkedSize) => ruler.size(root.box.width, root.box.height);
  const sizes = finished(was) === finished(now) ? [] : [`Finished ${finished(now)}, was ${finished(was)}.`];
  const name = new Map(pattern.fabrics.map((fabric) => [fabric.id, fabric.name]));
  const cuts = tallyChanges(cutTally(was.cloth, name, ruler), cutTally(now.cloth, name, ruler)).map(
    ({ what, was: before, now: after }) => `${what}: cut ${many(after)}, was ${many(before)}.`,
  );
  const yards = tallyChanges(yardTally(was.cloth, name), yardTally(now.cloth, name)).map(
    ({ what, was: before, now: after }) => `${what}: ${ruler.cloth(after)}, was ${ruler.cloth(before)}.`,
  );
  return [...sizes, ...yards, ...cuts];
}

type Names = ReadonlyMap<string, string>;

/** How many pieces of each size are cut from each fabric. */
function cutTally({ pieces }: Cloth, name: Names, ruler: Ruler): Tally {
  const tally = new Map<string, number>();
  for (const { fabric, width, height, count } of pieces) {
    const key = `${name.get(fabric) ?? fabric}, ${ruler.size(width.value, height.value)}`;
    tally.set(key, (tally.get(key) ?? 0) + count.value);
  }
  return tally;
}

function yardTally({ needs }: Cloth, name: Names): Tally {
  return new Map(needs.map(({ fabric, yards }) => [name.get(fabric) ?? fabric, yards.value]));
}
