import { arcBetween } from '../drawing/curve.ts';
import { type Drawing, doubleArea, patchPoints } from '../drawing/drawing.ts';
import { MEANT } from '../drawing/near.ts';
import type { Point } from '../drawing/turn.ts';
import type { Side } from '../recipe/schema.ts';
import { type Work, workOf } from './allowance/work.ts';
import { boardIn, isEqualParts, pressedInBoard } from './boardSeams.ts';
import { keyed } from './distinct.ts';
import { pressedTo } from './methods/joinOrder.ts';
import type { Unit } from './piecing.ts';
import { joinsOf, unitsOf } from './seamTree.ts';

/**
 * Where seams inside a unit run into its edge: how far from the edge's left or upper end, in grid units, and to which end of the
 * edge their allowance lies; 'open' where it lies to both, as at the tip of a goose.
 */
export interface EdgeSeam {
  readonly at: number;
  readonly lies: 'back' | 'forth' | 'open';
}

export type EdgeSeams = Readonly<Record<Side, readonly EdgeSeam[]>>;

/**
 * The seams of a unit that end inside its edges. Seams that run into its corners are left out: there the unit's own seam allowance
 * is.
 */
export function edgeSeams(unit: Unit): EdgeSeams {
  const work = workOf(unit, 1, { seam: 0 });
  const toward = towardOf(unit, work);
  const found = Object.fromEntries(SIDES.map((side) => [side, new Map<number, Set<'back' | 'forth'>>()]));
  for (const [a, b] of seamEdges(work)) {
    const patch = toward(a, b);
    if (patch === null) continue;
    for (const [vertex, walksIn] of [
      [a, true],
      [b, false],
    ] as const) {
      const place = work.drawing.points[vertex] as Point;
      const side = sideAt(work.drawing, place);
      if (side === null) continue;
      // A patch lies to the right of the edge it walks from a to b on its way round.
      const right = work.owner(a, b) === patch;
      const at = side === 'top' || side === 'bottom' ? place.x : place.y;
      const lies = (right === walksIn) === (side === 'top' || side === 'right') ? 'back' : 'forth';
      const here = found[side] as Map<number, Set<'back' | 'forth'>>;
      here.set(at, (here.get(at) ?? new Set()).add(lies));
    }
  }
  const sorted = (side: Side) => {
    const ends = [...(found[side] ?? [])].map(([at, lies]): EdgeSeam => {
      const [only, ...more] = lies;
      return { at, lies: only === undefined || more.length > 0 ? 'open' : only };
    });
    return ends.sort((p, q) => p.at - q.at);
  };
  return { top: sorted('top'), right: sorted('right'), bottom: sorted('bottom'), left: sorted('left') };
}

const SIDES = ['top', 'right', 'bottom', 'left'] as const satisfies readonly Side[];

/** Every edge between two patches, once. */
function seamEdges({ drawing, owner }: Work): readonly (readonly [number, number])[] {
  return drawing.patches.flatMap(({ outline }) =>
    outline.flatMap((a, i) => {
      const b = outline[(i + 1) % outline.length] as number;
      return a < b && owner(b, a) !== undefined ? [[a, b] as const] : [];
    }),
  );
}

/** The side a place lies on, away from the corners. */
function sideAt({ width, height }: Drawing, { x, y }: Point): Side | null {
  const [left, right] = [x < MEANT, x > width - MEANT];
  const [top, bottom] = [y < MEANT, y > height - MEANT];
  if ((left || right) && (top || bottom)) return null;
  if (top) return 'top';
  if (bottom) return 'bottom';
  return left ? 'left' : right ? 'right' : null;
}

type Toward = (a: number, b: number) => number | null;

function towardOf(unit: Unit, work: Work): Toward {
  if (unit.kind === 'pieced') return towardIn(unit, work);
  if (!isEqualParts(unit)) return towardSmaller(work);
  const pressedTo = pressedInBoard(unit);
  return (a, b) => pressedTo(work.owner(a, b) as number, work.owner(b, a) as number);
}

/**
 * Units of the trade are pressed to their skies and corners, which are smaller than what they are sewn to; curves away from the
 * patch that is round outside.
 */
function towardSmaller(work: Work): Toward {
  const { drawing, owner } = work;
  const area = (patch: number) =>
    doubleArea(patchPoints(drawing, drawing.patches[patch] as Drawing['patches'][number]));
  return (a, b) => {
    const [one, other] = [owner(a, b), owner(b, a)];
    if (one === undefined || other === undefined) return null;
    const arc = arcBetween(drawing, a, b);
    if (arc === null) return area(one) < area(other) ? one : other;
    const [from, to] = [drawing.points[a] as Point, drawing.points[b] as Point];
    // Walked clockwise, a patch has the centre of an arc that bulges out of it on its right.
    const side = (to.x - from.x) * (arc.centre.y - from.y) - (to.y - from.y) * (arc.centre.x - from.x);
    return side >= 0 ? other : one;
  };
}

/** A pieced unit is pressed seam by seam as its steps say, and the units of the trade inside it as they are made. */
function towardIn(unit: Extract<Unit, { kind: 'pieced' }>, work: Work): Toward {
  const size = work.drawing.points.length;
  const edge = (a: number, b: number) => Math.min(a, b) * size + Math.max(a, b);
  const to = new Map<number, ReadonlySet<number>>();
  for (const join of joinsOf(unit.seams)) {
    const pressed = pressedTo(work, join);
    for (const path of [join.seam, join.closing ?? []]) {
      path.slice(1).forEach((b, i) => {
        to.set(edge(path[i] as number, b), pressed);
      });
    }
  }
  const [inside, inBoards] = [towardSmaller(work), towardInBoards(unit, work)];
  return (a, b) => {
    const [one, other] = [work.owner(a, b), work.owner(b, a)] as [number, number];
    const pressed = to.get(edge(a, b));
    if (pressed !== undefined) return pressed.has(one) ? one : other;
    return inBoards(one, other) ?? inside(a, b);
  };
}

/** Of two neighbouring patches of one board inside a unit, the one their seam is pressed to; null for any others. */
function towardInBoards(
  { seams }: Extract<Unit, { kind: 'pieced' }>,
  { drawing }: Work,
): (one: number, other: number) => number | null {
  const boards = unitsOf(seams).flatMap((inside) => {
    const unit = keyed(inside.shape);
    return isEqualParts(unit) ? [{ places: boardIn(drawing, inside), pressedTo: pressedInBoard(unit) }] : [];
  });
  return (one, other) => {
    const board = boards.find(({ places }) => places.has(one) && places.has(other));
    if (board === undefined) return null;
    const [a, b] = [board.places.get(one) as number, board.places.get(other) as number];
    return board.pressedTo(a, b) === a ? one : other;
  };
}
