import { ALL_TURNS, type Turn, turnSize, UNTURNED, undoTurn } from '../drawing/turn.ts';
import type { Corner } from '../recipe/schema.ts';
import type { FlippedCorner, Unit, UnitLeaf } from './piecing.ts';
import type { LooseLeaf, Shape } from './sub.ts';

/**
 * The distinct unit a leaf is, and how it lies: two leaves that are the same thing turned get the same key. A unit that
 * only a mirror would make the same is kept apart, because a maker sews it the other way round.
 */
export function distinct(leaf: LooseLeaf): { readonly unit: Unit; readonly leaf: UnitLeaf } {
  const { shape, turn } = settled(leaf.shape, leaf.turn);
  const unit = { ...shape, key: keyOf(shape) } as Unit;
  return { unit, leaf: { kind: 'unit', unit: unit.key, turn, box: leaf.box, patches: leaf.patches } };
}

interface Lying {
  readonly shape: Shape;
  readonly turn: Turn;
}

function settled(shape: Shape, turn: Turn): Lying {
  switch (shape.kind) {
    case 'plain':
    case 'log':
      return longSideAcross(shape, { quarters: turn.quarters, mirrored: false });
    case 'geese':
      return { shape, turn: { quarters: turn.quarters, mirrored: false } };
    case 'hst':
      return sortedRoles(shape, inQuarters(turn), 2);
    case 'four-patch':
      return sortedRoles(shape, inQuarters(turn), 1);
    case 'corners':
      return settledCorners(shape, turn);
  }
}

function longSideAcross(shape: Shape, turn: Turn): Lying {
  const square = shape.width === shape.height;
  if (square) return { shape, turn: UNTURNED };
  if (shape.width > shape.height) return { shape, turn: { ...turn, quarters: (turn.quarters % 2) as 0 | 1 } };
  const quarters = ((turn.quarters + 1) % 2) as 0 | 1;
  return { shape: { ...shape, width: shape.height, height: shape.width }, turn: { quarters, mirrored: false } };
}

/** A mirrored HST or four-patch is the same one turned a quarter. */
function inQuarters(turn: Turn): Turn {
  const quarters = ((turn.quarters + (turn.mirrored ? 1 : 0)) % 4) as Turn['quarters'];
  return { quarters, mirrored: false };
}

/** Roles in the order of the alphabet; exchanging the two is the same as turning by `by` quarters. */
function sortedRoles(shape: Extract<Shape, { roles: readonly [string, string] }>, turn: Turn, by: number): Lying {
  const [a, b] = shape.roles;
  const period = 2 * by;
  const quarters = ((turn.quarters + (a > b ? by : 0)) % period) as Turn['quarters'];
  return { shape: a > b ? { ...shape, roles: [b, a] } : shape, turn: { quarters, mirrored: false } };
}

const CORNERS: readonly Corner[] = ['top-left', 'top-right', 'bottom-right', 'bottom-left'];
const MIRRORED: Readonly<Record<Corner, Corner>> = {
  'top-left': 'top-right',
  'top-right': 'top-left',
  'bottom-right': 'bottom-left',
  'bottom-left': 'bottom-right',
};

type CornersShape = Extract<Shape, { kind: 'corners' }>;

function turnedCorners(shape: CornersShape, turn: Turn): CornersShape {
  const moved = shape.corners.map((corner): FlippedCorner => {
    const at = turn.mirrored ? MIRRORED[corner.at] : corner.at;
    return { ...corner, at: CORNERS[(CORNERS.indexOf(at) + turn.quarters) % 4] as Corner };
  });
  const corners = moved.sort((p, q) => CORNERS.indexOf(p.at) - CORNERS.indexOf(q.at));
  return { ...shape, ...turnSize(shape.width, shape.height, turn), corners };
}

/** Of the quarter turns with the long side across, the one whose description comes first. */
function settledCorners(shape: CornersShape, turn: Turn): Lying {
  const lying = turnedCorners(shape, turn);
  const ways = ALL_TURNS.filter((way) => !way.mirrored)
    .map((way) => ({ shape: turnedCorners(lying, way), turn: undoTurn(way) }))
    .filter((way) => way.shape.width >= way.shape.height);
  const [first] = ways.sort((p, q) => (keyOf(p.shape) < keyOf(q.shape) ? -1 : keyOf(p.shape) > keyOf(q.shape) ? 1 : 0));
  return first as Lying;
}

/** What the unit is called in a file: kind, size in grid units, roles; for example `hst 2x2 light/dark`. */
function keyOf(shape: Shape): string {
  const size = `${shape.width}x${shape.height}`;
  switch (shape.kind) {
    case 'plain':
    case 'log':
      return `${shape.kind} ${size} ${shape.role}`;
    case 'corners':
      return `corners ${size} ${shape.role} ${shape.corners.map((c) => `${c.at} ${c.size} ${c.role}`).join(', ')}`;
    default:
      return `${shape.kind} ${size} ${shape.roles.join('/')}`;
  }
}
