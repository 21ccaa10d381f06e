import type { Box } from '../drawing/turn.ts';
import { UNTURNED } from '../drawing/turn.ts';
import type { Cell } from '../recipe/schema.ts';
import { complain, type Lowering, numbersFor, roleOf } from './lowering.ts';
import { shapeOf } from './lowerUnit.ts';
import { lengthWords } from './piecedUnit.ts';
import type { Unit } from './piecing.ts';
import type { Shape } from './shape.ts';
import { type LooseLeaf, placeSub, type Sub } from './sub.ts';
import { unitPolygons } from './unitShape.ts';

/** What a cell of `width` × `height` grid units holds, not yet turned; null with complaints when it cannot be. */
export function lowerCell(on: Lowering, cell: Cell, width: number, height: number, where: string): Sub | null {
  if ('recipe' in cell) return lowerNested(on, cell, width, height, where);
  const shape = shapeOf(on, cell, width, height, where);
  return shape === null ? null : leafSub(shape);
}

/** A single unit as a thing of its own. */
export function leafSub(shape: Shape): Sub {
  const polygons = unitPolygons({ ...shape, key: '' } as Unit);
  const box: Box = { x: 0, y: 0, width: shape.width, height: shape.height };
  const leaf: LooseLeaf = { kind: 'unit', shape, turn: UNTURNED, box, patches: polygons.map((_, index) => index) };
  return { width: shape.width, height: shape.height, polygons, root: leaf };
}

function lowerNested(
  on: Lowering,
  cell: Extract<Cell, { recipe: string }>,
  width: number,
  height: number,
  where: string,
): Sub | null {
  const recipe = on.book.get(cell.recipe);
  if (recipe === undefined) {
    complain(on, `There is no recipe “${cell.recipe}” here.`, `${where}.recipe`, 'Add it to the pattern’s recipes.');
    return null;
  }
  if (on.within.includes(recipe.id)) {
    complain(on, `The recipe “${recipe.name}” holds itself.`, `${where}.recipe`, 'Put another recipe or a unit there.');
    return null;
  }
  const sub = on.lowerBody(inside(on, recipe, cell, where));
  if (sub === null) return null;
  const factor = width / sub.width;
  if (Math.abs(sub.height * factor - height) > 1e-9 * height) {
    const [own, place] = [sizeWords(sub.width, sub.height), sizeWords(width, height)];
    const what = `“${recipe.name}” is ${own} on its grid and does not fill a cell of ${place}.`;
    complain(on, what, where, wouldFill(sub, width, height));
    return null;
  }
  const placed = placeSub(sub, factor, 0, 0);
  return placed.root.kind === 'unit' ? placed : { ...placed, root: { ...placed.root, name: recipe.name } };
}

/** What would make a recipe fill a place of another shape: a turn, or a place as wide or as high as this one. */
function wouldFill({ width: w, height: h }: Sub, width: number, height: number): string {
  if (Math.abs(w * width - h * height) < 1e-9 * w * width) return 'Turned a quarter it fills it.';
  const [wide, high] = [sizeWords((height * w) / h, height), sizeWords(width, (width * h) / w)];
  return `It fills ${wide} or ${high}: change the grid, or put something else there.`;
}

function sizeWords(width: number, height: number): string {
  return `${lengthWords(width)} by ${lengthWords(height)}`;
}

function inside(
  on: Lowering,
  recipe: Lowering['recipe'],
  cell: Extract<Cell, { recipe: string }>,
  where: string,
): Lowering {
  const roles = recipe.roles.map(({ id }) => {
    const outer = cell.roles?.[id] ?? id;
    return [id, roleOf(on, outer, `${where}.roles.${id}`) ?? id] as const;
  });
  for (const id of Object.keys(cell.roles ?? {})) {
    if (!recipe.roles.some((role) => role.id === id)) {
      complain(on, `“${recipe.name}” has no fabric role “${id}”.`, `${where}.roles.${id}`);
    }
  }
  const complaint = (what: string, place: string) => complain(on, what, `${where}.${place}`);
  return {
    ...on,
    recipe,
    numbers: numbersFor(recipe, cell.parameters ?? {}, complaint),
    roles: Object.fromEntries(roles),
    within: [...on.within, recipe.id],
    path: on.path === '' ? where : `${on.path}.${where}`,
  };
}
