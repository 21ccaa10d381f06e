import { afterTurn, type Turn, UNTURNED } from '../../drawing/turn.ts';
import { usualSpans, whyNot } from '../../recipe/cellFit.ts';
import { rolesIn } from '../../recipe/cellRoles.ts';
import { cellSchema } from '../../recipe/cellSchema.ts';
import type { GridBody, Cell as Held, Recipe } from '../../recipe/schema.ts';
import { readRow, type Token, writeRow } from '../../recipe/token.ts';
import type { Edit } from '../edit.ts';
import { heldBy } from '../recipes.ts';
import { withRevisions } from '../revisions.ts';
import type { Pattern } from '../schema.ts';
import { recipeName, withRecipe } from './drawn.ts';
import type { Cell } from './setting.ts';

/** What is put into cells of a grid. */
export interface PutCells {
  readonly recipe: string;
  readonly cells: readonly Cell[];
  readonly holds: Held;
  /** How it lies; left out, as the trade draws it. */
  readonly turn?: Turn;
  /** For a cell that holds another recipe: that recipe and all it holds, carried from now on where the pattern has them not. */
  readonly carried?: readonly Recipe[];
  readonly revisions?: Readonly<Record<string, number>>;
}

/**
 * Puts a unit or another recipe into cells of a grid. Cells whose shape does not suit it even when it is turned stay as they
 * are, and so does all when it asks for a role that the recipe has not, or would hold itself.
 */
export const putCells: Edit<PutCells> = {
  id: 'put-cells',
  name: ({ recipe, cells }, pattern) =>
    `Change ${cells.length === 1 ? 'a cell' : `${cells.length} cells`} of ${recipeName(pattern, recipe)}`,
  apply: (pattern, args) => {
    const recipe = pattern.recipes.find(({ id }) => id === args.recipe);
    const read = cellSchema.safeParse(args.holds);
    if (recipe?.body.kind !== 'grid' || !read.success || !isSound(pattern, recipe, read.data, args)) return pattern;
    const body = put(recipe, recipe.body, read.data, args);
    if (body === recipe.body) return pattern;
    const known = new Set(pattern.recipes.map(({ id }) => id));
    const carried = 'recipe' in read.data ? (args.carried ?? []).filter(({ id }) => !known.has(id)) : [];
    const next = withRecipe(pattern, recipe.id, (one) => ({ ...one, body }));
    return withRevisions({ ...next, recipes: [...next.recipes, ...carried] }, carried, args.revisions ?? {});
  },
};

function isSound(pattern: Pattern, recipe: Recipe, holds: Held, { carried = [] }: PutCells): boolean {
  const own = new Set(recipe.roles.map(({ id }) => id));
  if (!rolesIn(holds).every((role) => own.has(role))) return false;
  if (!('recipe' in holds)) return true;
  const book = new Map([...carried, ...pattern.recipes].map((one) => [one.id, one]));
  const within = new Set([holds.recipe]);
  for (const id of within) {
    const one = book.get(id);
    if (one === undefined || id === recipe.id) return false;
    for (const held of heldBy(one)) within.add(held);
  }
  return true;
}

function put(recipe: Recipe, body: GridBody, holds: Held, { cells, turn = UNTURNED }: PutCells): GridBody {
  const spans = usualSpans(recipe);
  if (spans === null) return body;
  const name = nameFor(body, holds);
  const layout = body.layout.map((line, row) => {
    const tokens = readRow(line);
    const here = cells.filter((cell) => cell.row === row);
    if (here.length === 0 || tokens.some((entry) => typeof entry === 'string')) return line;
    const next = (tokens as readonly Token[]).map((token, column) => {
      if (!here.some((cell) => cell.column === column)) return token;
      const lying = turnFor(holds, spans.columns[column] ?? 0, spans.rows[row] ?? 0, turn);
      return lying === null ? token : { name, turn: lying };
    });
    return writeRow(next);
  });
  if (layout.every((line, row) => line === body.layout[row])) return body;
  return { ...body, key: usedKey({ ...body.key, [name]: holds }, layout), layout };
}

const QUARTER: Turn = { quarters: 1, mirrored: false };

/** How a unit lies in a cell: as wished, a quarter further where it only fits so; null when it does not fit. */
function turnFor(holds: Held, width: number, height: number, wish: Turn): Turn | null {
  const fits = ({ quarters }: Turn) =>
    'recipe' in holds ||
    whyNot(holds, ...(quarters % 2 === 0 ? ([width, height] as const) : ([height, width] as const))) === null;
  const further = afterTurn(wish, QUARTER);
  return [wish, further].find(fits) ?? null;
}

/** The grid after a column or a row has another width: what still fits turned is turned, what fits no more is plain cloth. */
export function refitted(recipe: Recipe, body: GridBody): GridBody {
  const spans = usualSpans({ ...recipe, body });
  if (spans === null) return body;
  let next = body;
  for (const [row, line] of body.layout.entries())
    for (const [column, entry] of readRow(line).entries()) {
      const holds = typeof entry === 'string' ? undefined : body.key[entry.name];
      if (holds === undefined || typeof entry === 'string') continue;
      const lying = turnFor(holds, spans.columns[column] ?? 0, spans.rows[row] ?? 0, entry.turn);
      if (lying?.quarters === entry.turn.quarters) continue;
      const role = rolesIn(holds)[0] ?? '';
      const instead = lying === null ? ({ unit: 'plain', role } as const) : holds;
      const turn = lying ?? UNTURNED;
      next = put({ ...recipe, body: next }, next, instead, {
        recipe: recipe.id,
        cells: [{ column, row }],
        holds: instead,
        turn,
      });
    }
  return next;
}

/** The key without the names that stand nowhere any more. */
export function usedKey(key: GridBody['key'], layout: readonly string[]): GridBody['key'] {
  const used = new Set(
    layout.flatMap((line) => readRow(line).map((entry) => (typeof entry === 'string' ? entry : entry.name))),
  );
  return Object.fromEntries(Object.entries(key).filter(([name]) => used.has(name)));
}

/** The letter each kind of unit is first called by in a layout. */
const LETTERS: Readonly<Record<string, string>> = {
  plain: 'P',
  hst: 'H',
  geese: 'G',
  corners: 'C',
  'four-patch': 'F',
  qst: 'Q',
  'three-patch': 'T',
  'square-in-square': 'S',
  'half-rectangle': 'D',
  'nine-patch': 'N',
  checkerboard: 'B',
  rails: 'L',
  'quarter-circle': 'A',
};

/** The name the key has for this very cell, else a fresh one. */
function nameFor({ key }: GridBody, holds: Held): string {
  const asked = JSON.stringify(holds);
  const known = Object.entries(key).find(([, cell]) => JSON.stringify(cellSchema.parse(cell)) === asked);
  if (known !== undefined) return known[0];
  const letter = 'recipe' in holds ? 'R' : (LETTERS[holds.unit] ?? 'U');
  for (let number = 1; ; number += 1) {
    const name = number === 1 ? letter : `${letter}${number}`;
    if (key[name] === undefined) return name;
  }
}
