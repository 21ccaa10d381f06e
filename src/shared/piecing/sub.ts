import type { Polygon, PolygonCorner } from '../drawing/drawing.ts';
import { afterTurn, type Box, type Point, type Turn, turnBox, turnPoint, turnSize } from '../drawing/turn.ts';
import type { Side } from '../recipe/schema.ts';
import type { Log, Part } from './piecing.ts';
import { type Shape, scaleShape } from './shape.ts';
import { isLeaf, mapFour, mapTree } from './tree.ts';

export interface LooseLeaf {
  readonly kind: 'unit';
  readonly shape: Shape;
  readonly turn: Turn;
  readonly box: Box;
  readonly patches: readonly number[];
}

/** A piece of a block while it is being lowered: loose polygons and the tree over them, in units of its own. */
export interface Sub {
  readonly width: number;
  readonly height: number;
  readonly polygons: readonly Polygon[];
  readonly root: Part<LooseLeaf>;
}

const SIDES: readonly Side[] = ['top', 'right', 'bottom', 'left'];

/** The side that `side` becomes when the thing is turned. */
export function turnSide(side: Side, turn: Turn): Side {
  const swapped = turn.mirrored && (side === 'left' || side === 'right');
  const mirrored: Side = swapped ? (side === 'left' ? 'right' : 'left') : side;
  return SIDES[(SIDES.indexOf(mirrored) + turn.quarters) % 4] as Side;
}

/** The whole thing turned; it again starts at 0, 0. */
export function turnSub(sub: Sub, turn: Turn): Sub {
  const { width, height } = sub;
  const box = (b: Box) => turnBox(b, turn, width, height);
  const turned = mapTree(sub.root, (leaf) => ({ ...leaf, box: box(leaf.box), turn: afterTurn(leaf.turn, turn) }), box);
  return {
    ...turnSize(width, height, turn),
    polygons: mapCorners(sub.polygons, (p) => turnPoint(p, turn, width, height)),
    root: settleRows(turned, turn),
  };
}

/** A turned row runs along the other axis at a quarter turn, and is counted again from the left or from the top. */
function settleRows(part: Part<LooseLeaf>, turn: Turn): Part<LooseLeaf> {
  if (isLeaf(part)) return part;
  if (part.kind !== 'row') {
    const log = (one: Log<LooseLeaf>) => ({ side: turnSide(one.side, turn), part: settleRows(one.part, turn) });
    const core = settleRows(part.core, turn);
    return part.kind === 'ring'
      ? { ...part, core, logs: mapFour(part.logs, log) }
      : { ...part, core, logs: part.logs.map(log) };
  }
  const other = part.along === 'across' ? 'down' : 'across';
  const along = turn.quarters % 2 === 0 ? part.along : other;
  const start = (inner: Part<LooseLeaf>) => (along === 'across' ? inner.box.x : inner.box.y);
  return { ...part, along, parts: part.parts.map((p) => settleRows(p, turn)).sort((a, b) => start(a) - start(b)) };
}

/** The whole thing made `factor` times as large and moved to x, y. */
export function placeSub(sub: Sub, factor: number, x: number, y: number): Sub {
  const box = (b: Box): Box => ({
    x: b.x * factor + x,
    y: b.y * factor + y,
    width: b.width * factor,
    height: b.height * factor,
  });
  return {
    width: sub.width * factor,
    height: sub.height * factor,
    polygons: mapCorners(sub.polygons, (p) => ({ x: p.x * factor + x, y: p.y * factor + y })),
    root: mapTree(sub.root, (leaf) => ({ ...leaf, shape: scaleShape(leaf.shape, factor), box: box(leaf.box) }), box),
  };
}

function mapCorners(polygons: readonly Polygon[], move: (point: Point) => Point): readonly Polygon[] {
  const corner = ({ centre, ...point }: PolygonCorner): PolygonCorner =>
    centre === undefined ? move(point) : { ...move(point), centre: move(centre) };
  return polygons.map(({ corners, role }) => ({ role, corners: corners.map(corner) }));
}

/** The tree with its patch numbers moved on, for putting several things into one block. */
export function renumber(root: Part<LooseLeaf>, by: number): Part<LooseLeaf> {
  const moved = (leaf: LooseLeaf): LooseLeaf => ({ ...leaf, patches: leaf.patches.map((patch) => patch + by) });
  return mapTree(root, moved, (box) => box);
}
