import type { UnitCell } from '../recipe/schema.ts';
import { amountOf, complain, type Lowering, roleOf } from './lowering.ts';
import type { FlippedCorner } from './piecing.ts';
import type { Shape } from './shape.ts';

type CornersCell = Extract<UnitCell, { unit: 'corners' }>;

/** A rectangle with flipped corners; null with complaints when they do not fit on it. */
export function cornersShape(
  on: Lowering,
  cell: CornersCell,
  width: number,
  height: number,
  where: string,
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
  return { kind: 'corners', width, height, role, corners: whole };
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
