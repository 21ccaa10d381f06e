import { whyNot } from '../recipe/cellFit.ts';
import type { Recipe, UnitCell } from '../recipe/schema.ts';
import { cornersShape } from './lowerCorners.ts';
import { amountOf, complain, type Lowering, roleOf } from './lowering.ts';
import type { Unit } from './piecing.ts';
import type { Shape } from './shape.ts';

/** A unit's cell as the unit it is, `width` × `height` grid units; null with complaints when the cell does not suit it. */
export function shapeOf(on: Lowering, cell: UnitCell, width: number, height: number, where: string): Shape | null {
  const shape = plainly(on, cell, width, height, where);
  const why = whyNot(cell, width, height);
  if (why !== null) {
    complain(on, `${why}; this one is ${width} by ${height}.`, where, 'Change the widths of the columns or rows.');
    return null;
  }
  if (shape === null || !('method' in cell) || cell.method === undefined) return shape;
  return { ...shape, method: cell.method };
}

function plainly(on: Lowering, cell: UnitCell, width: number, height: number, where: string): Shape | null {
  const size = { width, height };
  const role = 'role' in cell ? roleOf(on, cell.role, `${where}.role`) : '';
  const roles = 'roles' in cell ? rolesOf(on, cell.roles, `${where}.roles`) : [];
  if (role === null || roles === null) return null;
  switch (cell.unit) {
    case 'plain':
      return { kind: 'plain', ...size, role };
    case 'corners':
      return cornersShape(on, cell, width, height, where);
    case 'square-in-square':
      return { kind: cell.unit, ...size, role, roles: roles as Four };
    case 'qst':
      return { kind: cell.unit, ...size, roles: roles as Four };
    case 'three-patch':
    case 'nine-patch':
      return { kind: cell.unit, ...size, roles: roles as Three };
    case 'rails':
      return { kind: cell.unit, ...size, roles };
    case 'half-rectangle':
      return { kind: cell.unit, ...size, diagonal: cell.diagonal, roles: roles as Two };
    case 'checkerboard':
      return { kind: cell.unit, ...size, columns: cell.columns, rows: cell.rows, roles: roles as Two };
    case 'quarter-circle':
      return quarterCircle(on, cell, size, roles as Two, where);
    default:
      return { kind: cell.unit, ...size, roles: roles as Two };
  }
}

type Two = [string, string];
type Three = [string, string, string];
type Four = [string, string, string, string];

function rolesOf(on: Lowering, roles: readonly string[], where: string): readonly string[] | null {
  const outer = roles.map((role, i) => roleOf(on, role, `${where}[${i}]`));
  return outer.includes(null) ? null : (outer as string[]);
}

function quarterCircle(
  on: Lowering,
  cell: Extract<UnitCell, { unit: 'quarter-circle' }>,
  size: { readonly width: number; readonly height: number },
  roles: Two,
  where: string,
): Shape | null {
  const radius = amountOf(on, cell.radius, `${where}.radius`);
  if (radius === null) return null;
  if (radius <= size.width + 1e-9) return { kind: 'quarter-circle', ...size, radius, roles };
  complain(on, `A quarter circle of ${radius} is larger than its cell of ${size.width}.`, `${where}.radius`);
  return null;
}

/** A cell's unit as it would be in a cell of this shape, its roles the recipe's own; null when the cell does not suit it. */
export function unitFor(recipe: Recipe, cell: UnitCell, width: number, height: number): Unit | null {
  const numbers = Object.fromEntries(recipe.parameters.map(({ id, default: usual }) => [id, usual]));
  const roles = Object.fromEntries(recipe.roles.map(({ id }) => [id, id]));
  const rest = { book: new Map(), within: [recipe.id], path: '', findings: [], notes: [], lowerBody: () => null };
  const shape = shapeOf({ ...rest, recipe, numbers, roles }, cell, width, height, '');
  return shape === null ? null : ({ ...shape, key: '' } as Unit);
}
