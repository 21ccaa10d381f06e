import type { Inches } from '../measure/inches.ts';
import type { Recipe, Role, Value } from '../recipe/schema.ts';
import { type Fabric, type Pattern, patternSchema, type Size } from './schema.ts';

/** Colours of sea, sand and lamplight for fabrics nobody has chosen yet, by value. */
const COLOURS: Readonly<Record<Value, readonly string[]>> = {
  light: ['#f1e9d8', '#dde6e2', '#f2dcc0', '#e6e1ee', '#e3ddcb'],
  medium: ['#d9a550', '#7fa39b', '#c9796a', '#8d9bb8', '#a3a06a'],
  dark: ['#27425c', '#6f2f3b', '#2f5248', '#4b3b58', '#59422f'],
};

/** A fabric for each role, with colours of its own value that differ from one another as long as there are enough. */
export function fabricsForRoles(roles: readonly Role[]): Fabric[] {
  const used: Record<Value, number> = { light: 0, medium: 0, dark: 0 };
  return roles.map(({ id, name, value }) => {
    const colours = COLOURS[value];
    const colour = colours[used[value] % colours.length] as string;
    used[value] += 1;
    return { id, name, value, colour };
  });
}

/** What three sizes a maker asks for most measure without their borders, roughly: common practice, from memory. */
const USUAL: readonly {
  readonly id: string;
  readonly name: string;
  readonly width: Inches;
  readonly height: Inches;
}[] = [
  { id: 'cot', name: 'Cot', width: 36, height: 48 },
  { id: 'lap', name: 'Lap', width: 48, height: 60 },
  { id: 'double', name: 'Double', width: 72, height: 84 },
];

/** Three sizes of whole blocks that come nearest to the usual ones. */
function usualSizes(block: Inches): Size[] {
  const blocks = (length: Inches) => Math.max(1, Math.round(length / block));
  return USUAL.map(({ id, name, width, height }) => ({
    id,
    name,
    across: blocks(width),
    down: blocks(height),
    block,
    borders: id === 'cot' ? { border: 2 } : {},
  }));
}

export interface Fresh {
  readonly id: string;
  readonly title: string;
  readonly designer: string;
  /** ISO date of the first edition. */
  readonly date: string;
  /** The library's revision of each recipe, where it is known. */
  readonly revisions?: Readonly<Record<string, number>>;
}

/**
 * A new pattern of one block in three sizes, with a border, ready to be changed.
 * @param recipe what the block is made by
 * @param held every recipe it holds, directly or through others
 */
export function freshPattern(recipe: Recipe, held: readonly Recipe[], fresh: Fresh): Pattern {
  const { id, title, designer, date, revisions } = fresh;
  const fabrics = fabricsForRoles(recipe.roles);
  const of = (value: Value) => (fabrics.find((fabric) => fabric.value === value) ?? (fabrics[0] as Fabric)).id;
  const file = patternSchema.parse({
    format: 'piecewright-pattern',
    version: 1,
    id,
    title,
    edition: { number: 1, date },
    words: { designer },
    recipes: [recipe, ...held],
    ...(revisions === undefined ? {} : { revisions }),
    blocks: [
      { id: 'A', name: recipe.name, recipe: recipe.id, fabrics: Object.fromEntries(fabrics.map((f) => [f.id, f.id])) },
    ],
    fabrics,
    setting: { kind: 'straight', motif: ['A'] },
    borders: [{ id: 'border', name: 'Border', fabric: of('dark'), width: 4 }],
    binding: { fabric: of('dark') },
    backing: { fabric: of('light') },
    sizes: usualSizes(recipe.finished),
  });
  return { ...file, recipes: [recipe, ...held] };
}
