import { distance, MEANT } from '../../drawing/near.ts';
import { ALL_TURNS, type Turn, turnSize, UNTURNED } from '../../drawing/turn.ts';
import type { FlippedCorner } from '../piecing.ts';
import type { Shape } from '../shape.ts';
import type { LooseLeaf } from '../sub.ts';
import { CORNERS } from '../turnShape.ts';
import { boxOf, type Field } from './field.ts';
import type { FieldPatch, Region } from './fieldPatch.ts';
import { type Held, type HeldPatch, matched } from './match.ts';
import { recogniseBoard } from './recogniseBoard.ts';

/** No unit with diagonals or arcs that the trade makes as one thing has more patches. */
export const MOST_CUT = 5;

/**
 * The unit of the trade that a rectangle of the drawing is, however it lies: found by its geometry alone. Null when the
 * trade has no unit like it.
 * @param patches the patches the rectangle holds
 */
export function recognise(field: Field, region: Region, patches: readonly number[]): LooseLeaf | null {
  const plain = patches.every((index) => field.patches[index]?.isRectangle);
  if (!plain && patches.length > MOST_CUT) return null;
  const box = boxOf(field, region);
  return recogniseHeld({
    box,
    patches: patches.map((index) => ({ index, patch: field.patches[index] as FieldPatch })),
  });
}

/** The unit of the trade that patches in a box are; null when the trade has no unit like it. */
export function recogniseHeld(held: Held): LooseLeaf | null {
  const { box, patches } = held;
  const plain = patches.every(({ patch }) => patch.isRectangle);
  if (!plain && patches.length > MOST_CUT) return null;
  const [only, ...more] = patches;
  if (only === undefined) return null;
  const { width, height } = box;
  if (more.length === 0) {
    if (!plain) return null;
    const shape: Shape = { kind: 'plain', width, height, role: only.patch.role };
    return { kind: 'unit', shape, turn: UNTURNED, box, patches: [only.index] };
  }
  return plain ? recogniseBoard(held) : recogniseCut(held);
}

/** The units with diagonals or arcs: each shape the trade knows is laid on the patches, each way it can lie. */
function recogniseCut(held: Held): LooseLeaf | null {
  for (const { shape, turns } of [...shapesFor(held), ...cornersFor(held)]) {
    for (const turn of turns) {
      const found = matched(shape, turn, held);
      if (found !== null) return found;
    }
  }
  return null;
}

interface Candidate {
  readonly shape: Shape;
  readonly turns: readonly Turn[];
}

const QUARTERS = ALL_TURNS.filter(({ mirrored }) => !mirrored);

/** Shapes by the number of their patches; roles are names of places. */
function shapesFor({ box, patches }: Held): readonly Candidate[] {
  const { width, height } = box;
  const square = Math.abs(width - height) < 2 * MEANT;
  const size = { width, height };
  if (patches.length === 2) {
    const halves = (diagonal: 'rising' | 'falling'): Candidate => {
      return { shape: { kind: 'half-rectangle', ...size, diagonal, roles: ['a', 'b'] }, turns: [UNTURNED] };
    };
    if (!square) return [halves('rising'), halves('falling')];
    return [{ shape: { kind: 'hst', ...size, roles: ['a', 'b'] }, turns: QUARTERS }, ...quarterCircles(patches, width)];
  }
  if (patches.length === 3) {
    if (square) return [{ shape: { kind: 'three-patch', ...size, roles: ['a', 'b', 'c'] }, turns: QUARTERS }];
    return geese(width, height);
  }
  if (patches.length === 4 && square) {
    return [{ shape: { kind: 'qst', ...size, roles: ['a', 'b', 'c', 'd'] }, turns: [UNTURNED] }];
  }
  if (patches.length === 5 && square) {
    const roles = ['a', 'b', 'c', 'd'] as const;
    return [{ shape: { kind: 'square-in-square', ...size, role: 'e', roles }, turns: [UNTURNED] }];
  }
  return [];
}

function geese(width: number, height: number): readonly Candidate[] {
  const [long, short] = [Math.max(width, height), Math.min(width, height)];
  if (Math.abs(long - 2 * short) >= 2 * MEANT) return [];
  const turns = QUARTERS.filter((turn) => turnSize(long, short, turn).width === width);
  return [{ shape: { kind: 'geese', width: long, height: short, roles: ['a', 'b'] }, turns }];
}

/** A patch with one arc about a corner of the square tells the radius. */
function quarterCircles(patches: Held['patches'], side: number): readonly Candidate[] {
  const radii = patches.flatMap(({ patch }) => {
    const arc = patch.corners.find(({ centre }) => centre !== undefined);
    return arc?.centre === undefined || patch.corners.length !== 3 ? [] : [distance(arc, arc.centre)];
  });
  const shape = (radius: number): Shape => {
    const whole = Math.abs(radius - side) < 2 * MEANT ? side : radius;
    return { kind: 'quarter-circle', width: side, height: side, radius: whole, roles: ['a', 'b'] };
  };
  return radii.map((radius) => ({ shape: shape(radius), turns: QUARTERS }));
}

/** A rectangle with corner triangles: each triangle at a corner of the box tells its size. */
function cornersFor({ box, patches }: Held): readonly Candidate[] {
  const corners = CORNERS.flatMap((at): FlippedCorner[] => {
    const x = at.endsWith('left') ? box.x : box.x + box.width;
    const y = at.startsWith('top') ? box.y : box.y + box.height;
    const sizes = patches.flatMap(({ patch }) => legAt(patch, { x, y }) ?? []);
    return sizes.map((size) => ({ at, size, role: at }));
  });
  if (corners.length !== patches.length - 1) return [];
  const shape: Shape = { kind: 'corners', width: box.width, height: box.height, role: 'rest', corners };
  return [{ shape, turns: [UNTURNED] }];
}

/** The leg of a triangle with its square corner here and two equal upright sides; null for any other patch. */
function legAt({ corners }: HeldPatch, here: { readonly x: number; readonly y: number }): number | null {
  const others = corners.filter((corner) => distance(corner, here) >= MEANT);
  const [a, b, ...more] = others;
  if (a === undefined || b === undefined || more.length > 0 || corners.length !== 3) return null;
  if (corners.some(({ centre }) => centre !== undefined)) return null;
  const leg = distance(a, here);
  const level = Math.abs(a.x - here.x) < MEANT || Math.abs(a.y - here.y) < MEANT;
  const other = Math.abs(b.x - here.x) < MEANT || Math.abs(b.y - here.y) < MEANT;
  return level && other && Math.abs(leg - distance(b, here)) < 2 * MEANT ? leg : null;
}
