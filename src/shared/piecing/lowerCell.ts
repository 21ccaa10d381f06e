import type { Box } from '../drawing/turn.ts';
import { UNTURNED } from '../drawing/turn.ts';
import type { Cell, UnitCell } from '../recipe/schema.ts';
import { amountOf, complain, type Lowering, numbersFor, roleOf } from './lowering.ts';
import type { FlippedCorner, Unit } from './piecing.ts';
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
    const ratio = `${sub.width} by ${sub.height}`;
    complain(on, `“${recipe.name}” is ${ratio} on its grid and does not fill a cell of ${width} by ${height}.`, where);
    return null;
  }
  const placed = placeSub(sub, factor, 0, 0);
  return placed.root.kind === 'unit' ? placed : { ...placed, root: { ...placed.root, name: recipe.name } };
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

function shapeOf(on: Lowering, cell: UnitCell, width: number, height: number, where: string): Shape | null {
  const method = 'method' in cell && cell.method !== undefined ? { method: cell.method } : {};
  if (cell.unit === 'plain') {
    const role = roleOf(on, cell.role, `${where}.role`);
    return role === null ? null : { kind: 'plain', width, height, role };
  }
  if (cell.unit === 'corners') return cornersShape(on, cell, width, height, where, method);
  const first = roleOf(on, cell.roles[0], `${where}.roles[0]`);
  const second = roleOf(on, cell.roles[1], `${where}.roles[1]`);
  if (first === null || second === null || !fits(on, cell.unit, width, height, where)) return null;
  return { kind: cell.unit, width, height, roles: [first, second], ...method };
}

const NEEDS = {
  hst: 'A half-square triangle needs a square cell',
  geese: 'Flying geese need a cell twice as wide as high',
  'four-patch': 'A four-patch needs a square cell',
} as const;

function fits(on: Lowering, unit: keyof typeof NEEDS, width: number, height: number, where: string): boolean {
  const wanted = unit === 'geese' ? 2 * height : height;
  if (Math.abs(width - wanted) < 1e-9 * width) return true;
  complain(
    on,
    `${NEEDS[unit]}; this one is ${width} by ${height}.`,
    where,
    'Change the widths of the columns or rows.',
  );
  return false;
}

type CornersCell = Extract<UnitCell, { unit: 'corners' }>;

function cornersShape(
  on: Lowering,
  cell: CornersCell,
  width: number,
  height: number,
  where: string,
  method: { method?: string },
): Shape | null {
  const role = roleOf(on, cell.role, `${where}.role`);
  const corners = cell.corners.map((corner, i): FlippedCorner | null => {
    const size = amountOf(on, corner.size, `${where}.corners[${i}].size`);
    const outer = roleOf(on, corner.role, `${where}.corners[${i}].role`);
    return size === null || outer === null ? null : { at: corner.at, role: outer, size };
  });
  if (role === null || corners.includes(null)) return null;
  const whole = corners as FlippedCorner[];
  if (!cornersFit(on, whole, width, height, where)) return null;
  return { kind: 'corners', width, height, role, corners: whole, ...method };
}

const NEIGHBOURS = [
  ['top-left', 'top-right', 'width'],
  ['bottom-left', 'bottom-right', 'width'],
  ['top-left', 'bottom-left', 'height'],
  ['top-right', 'bottom-right', 'height'],
] as const;

/** Corners must not be given twice, reach past the rectangle, or overlap along a side. */
function cornersFit(
  on: Lowering,
  corners: readonly FlippedCorner[],
  width: number,
  height: number,
  where: string,
): boolean {
  const twice = corners.find((corner, i) => corners.findIndex(({ at }) => at === corner.at) !== i);
  if (twice !== undefined) complain(on, `The ${twice.at.replace('-', ' ')} corner is given twice.`, `${where}.corners`);
  const size = (at: string) => corners.find((corner) => corner.at === at)?.size ?? 0;
  const over = NEIGHBOURS.find(([a, b, side]) => size(a) + size(b) > (side === 'width' ? width : height) + 1e-9);
  if (over !== undefined) {
    const [a, b] = over.map((word) => word.replace('-', ' '));
    complain(
      on,
      `The corners ${a} and ${b} overlap in a cell of ${width} by ${height}.`,
      `${where}.corners`,
      'Make one smaller.',
    );
  }
  return twice === undefined && over === undefined;
}
