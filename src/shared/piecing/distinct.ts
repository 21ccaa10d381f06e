import { ALL_TURNS, type Turn, UNTURNED, undoTurn } from '../drawing/turn.ts';
import { digest, lengthWords, orderPieced } from './piecedUnit.ts';
import type { Unit, UnitLeaf } from './piecing.ts';
import { mapUnits } from './seamTree.ts';
import type { Shape } from './shape.ts';
import type { LooseLeaf } from './sub.ts';
import type { TradeShape, TradeUnit } from './tradeUnit.ts';
import { type Described, turnShape } from './turnShape.ts';

/**
 * The distinct unit a leaf is, and how it lies: two leaves that are the same thing turned get the same key. A unit that
 * only a mirror would make the same is kept apart, because a maker sews it the other way round.
 */
export function distinct(loose: LooseLeaf): { readonly unit: Unit; readonly leaf: UnitLeaf } {
  const { shape, turn, order } = settled(loose.shape, loose.turn);
  const unit = { ...shape, key: keyOf(shape) } as Unit;
  const patches = order === undefined ? loose.patches : order.map((was) => loose.patches[was] as number);
  return { unit, leaf: { kind: 'unit', unit: unit.key, turn, box: loose.box, patches } };
}

/** A unit of the trade with its name, as it stands inside a pieced one. */
export function keyed(shape: TradeShape): TradeUnit {
  return { ...shape, key: keyOf(shape) };
}

/** A unit of the trade as all of its likes are described: the same for those that are the same thing turned. */
export function described(shape: TradeShape, turn: Turn): TradeShape {
  return settled(shape, turn).shape as TradeShape;
}

interface Lying {
  readonly shape: Shape;
  readonly turn: Turn;
  /** For each patch, which one of the leaf's it is; left out when they stay in order. */
  readonly order?: readonly number[];
}

function settled(shape: Shape, turn: Turn): Lying {
  switch (shape.kind) {
    case 'plain':
    case 'log':
      return longSideAcross(shape, { quarters: turn.quarters, mirrored: false });
    case 'nine-patch':
      return { shape, turn: UNTURNED };
    case 'geese':
      return { shape, turn: { quarters: turn.quarters, mirrored: false } };
    case 'quarter-circle':
      return { shape, turn: inQuarters(turn) };
    case 'three-patch':
      return { shape: turn.mirrored ? exchangedQuarters(shape) : shape, turn: inQuarters(turn) };
    case 'hst':
      return sortedRoles(shape, inQuarters(turn), 2);
    case 'four-patch':
      return sortedRoles(shape, inQuarters(turn), 1);
    case 'rails':
      return sortedRails(shape, turn);
    default:
      return firstDescribed(shape, turn);
  }
}

function longSideAcross(shape: Shape, turn: Turn): Lying {
  const square = shape.width === shape.height;
  if (square) return { shape, turn: UNTURNED };
  if (shape.width > shape.height) return { shape, turn: { ...turn, quarters: (turn.quarters % 2) as 0 | 1 } };
  const quarters = ((turn.quarters + 1) % 2) as 0 | 1;
  return { shape: { ...shape, width: shape.height, height: shape.width }, turn: { quarters, mirrored: false } };
}

/** A unit that the diagonal through its top left corner halves alike: mirrored, it is the same one turned a quarter. */
function inQuarters(turn: Turn): Turn {
  const quarters = ((turn.quarters + (turn.mirrored ? 1 : 0)) % 4) as Turn['quarters'];
  return { quarters, mirrored: false };
}

function exchangedQuarters(shape: Extract<Shape, { kind: 'three-patch' }>): Shape {
  const [half, top, left] = shape.roles;
  return { ...shape, roles: [half, left, top] };
}

/** Roles in the order of the alphabet; exchanging the two is the same as turning by `by` quarters. */
function sortedRoles(shape: Extract<Shape, { kind: 'hst' | 'four-patch' }>, turn: Turn, by: number): Lying {
  const [a, b] = shape.roles;
  const period = 2 * by;
  const quarters = ((turn.quarters + (a > b ? by : 0)) % period) as Turn['quarters'];
  return { shape: a > b ? { ...shape, roles: [b, a] } : shape, turn: { quarters, mirrored: false } };
}

/** Strips from the top down: turned by a half they come the other way round, and mirrored they stay as they are. */
function sortedRails(shape: Extract<Shape, { kind: 'rails' }>, { quarters }: Turn): Lying {
  const [down, up] = [shape.roles.join('/'), [...shape.roles].reverse().join('/')];
  if (down === up) return { shape, turn: { quarters: (quarters % 2) as 0 | 1, mirrored: false } };
  if (down < up) return { shape, turn: { quarters, mirrored: false } };
  const turned = ((quarters + 2) % 4) as Turn['quarters'];
  return { shape: { ...shape, roles: [...shape.roles].reverse() }, turn: { quarters: turned, mirrored: false } };
}

/** Of the quarter turns with the long side across, the one whose description comes first. */
function firstDescribed(shape: Described, turn: Turn): Lying {
  const lying = turnedShape(shape, turn);
  const ways = ALL_TURNS.filter((way) => !way.mirrored).flatMap((way) => {
    const turned = turnedShape(lying, way);
    return turned.width < turned.height ? [] : [{ ...named(turned), turn: undoTurn(way) }];
  });
  const [first] = ways.sort((p, q) => (p.words < q.words ? -1 : p.words > q.words ? 1 : 0));
  return first as (typeof ways)[number];
}

/** The shape turned; the units that stand in a pieced one are what they then are. */
function turnedShape(shape: Described, turn: Turn): Described {
  const turned = turnShape(shape, turn);
  if (turned.kind !== 'pieced') return turned;
  return { ...turned, seams: mapUnits(turned.seams, (inside) => described(inside, turn)) };
}

function named(shape: Described): Pick<Lying, 'shape' | 'order'> & { readonly words: string } {
  return shape.kind === 'pieced' ? orderPieced(shape) : { shape, words: keyOf(shape) };
}

/** What the unit is called in a file: kind, size in grid units, roles; for example `hst 2x2 light/dark`. */
function keyOf(shape: Shape): string {
  return `${shape.kind} ${lengthWords(shape.width)}x${lengthWords(shape.height)} ${likeness(shape)}`;
}

function likeness(shape: Shape): string {
  switch (shape.kind) {
    case 'plain':
    case 'log':
      return shape.role;
    case 'corners': {
      const corners = shape.corners.map(({ at, size, role }) => `${at} ${lengthWords(size)} ${role}`);
      return `${shape.role} ${corners.join(', ')}`;
    }
    case 'square-in-square':
      return `${shape.role} ${shape.roles.join('/')}`;
    case 'half-rectangle':
      return `${shape.diagonal} ${shape.roles.join('/')}`;
    case 'checkerboard':
      return `${shape.columns}x${shape.rows} ${shape.roles.join('/')}`;
    case 'quarter-circle':
      return `${lengthWords(shape.radius)} ${shape.roles.join('/')}`;
    case 'pieced':
      return `${shape.drawing.patches.length} patches ${digest(orderPieced(shape).words)}`;
    default:
      return shape.roles.join('/');
  }
}
