import type { Cell } from './schema.ts';

/** The roles of its recipe that a cell is cut from, each as often as the cell names it. */
export function rolesIn(cell: Cell): readonly string[] {
  if ('recipe' in cell) return Object.values(cell.roles ?? {});
  const own = 'role' in cell ? [cell.role] : [];
  if (cell.unit === 'corners') return [...own, ...cell.corners.map(({ role }) => role)];
  return 'roles' in cell ? [...own, ...cell.roles] : own;
}

/** The cell with every role put through `other`. */
export function withRoles<Of extends Cell>(cell: Of, other: (role: string) => string): Of {
  const given: Cell = cell;
  if ('recipe' in given) {
    if (given.roles === undefined) return cell;
    const roles = Object.entries(given.roles).map(([inner, outer]) => [inner, other(outer)] as const);
    return { ...cell, roles: Object.fromEntries(roles) };
  }
  const own = 'role' in given ? { role: other(given.role) } : {};
  if (given.unit === 'corners') {
    return { ...cell, ...own, corners: given.corners.map((corner) => ({ ...corner, role: other(corner.role) })) };
  }
  return 'roles' in given ? { ...cell, ...own, roles: given.roles.map(other) } : { ...cell, ...own };
}
