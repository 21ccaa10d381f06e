import { boxAbout } from '../drawing/boxes.ts';
import { pointAt } from '../drawing/curve.ts';
import type { Drawing } from '../drawing/drawing.ts';
import { MEANT } from '../drawing/near.ts';
import type { Point } from '../drawing/turn.ts';
import { boardWork } from './methods/board.ts';
import type { Board } from './methods/boardSize.ts';
import { lyingSet } from './methods/columns.ts';
import type { Unit } from './piecing.ts';
import type { SeamUnit } from './seamTree.ts';
import { unitPolygons } from './unitShape.ts';

/** Of two neighbouring rectangles of a unit, the one their seam is pressed to; rectangles by their number in the unit. */
type PressedTo = (one: number, other: number) => number;

type EqualParts = Board | Extract<Unit, { kind: 'four-patch' }>;

/** Whether a unit is made of equal squares or strips, whose size does not say how they are pressed. */
export function isEqualParts(unit: Unit): unit is EqualParts {
  return ['four-patch', 'nine-patch', 'checkerboard', 'rails'].includes(unit.kind);
}

/** How the seams of such a unit are pressed: as the ways of making it say, whichever is chosen. */
export function pressedInBoard(unit: EqualParts): PressedTo {
  // A four-patch is spun: its seams all lie one way round its middle, so that it nests on every side (common practice).
  if (unit.kind === 'four-patch') return (one, other) => ((one + 1) % 4 === other ? other : one);
  const { columns, toLeft, inRows } = boardWork(unit, { grid: 1, seam: 0, step: 1 });
  const sets = columns.map(lyingSet);
  const inLine = inRows ? (sets[0]?.roles.length ?? 1) : columns.length;
  const place = (patch: number) => {
    const [across, down] = [patch % inLine, Math.floor(patch / inLine)];
    return inRows ? { column: down, row: across } : { column: across, row: down };
  };
  return (one, other) => {
    const [a, b] = [place(one), place(other)];
    const isFirst = a.column + a.row < b.column + b.row;
    const [first, second] = isFirst ? [a, b] : [b, a];
    const toFirst = first.column === second.column ? sets[first.column]?.pressedUp[first.row] : toLeft(first.column);
    return (toFirst === true) === isFirst ? one : other;
  };
}

/**
 * Which rectangle of a board each patch is where it stands in a larger unit, at whatever slant.
 * @throws RangeError when the patches do not make the unit: the tree and its drawing do not belong together
 */
export function boardIn(drawing: Drawing, { shape, patches }: SeamUnit): ReadonlyMap<number, number> {
  const places = patches.map((patch) => ({
    patch,
    role: roleOf(drawing, patch),
    middle: middleOf(pointsOf(drawing, patch)),
  }));
  const middle = middleOf(patches.flatMap((patch) => pointsOf(drawing, patch)));
  const wanted = unitPolygons({ ...shape, key: '' } as Unit).map(({ role, corners }) => ({
    role,
    at: middleOf(corners),
  }));
  for (const way of waysOf(drawing, patches[0] as number)) {
    const found = wanted.map(({ role, at }) => {
      const [x, y] = [at.x - shape.width / 2, at.y - shape.height / 2];
      const there = { x: middle.x + x * way.x - y * way.y, y: middle.y + x * way.y + y * way.x };
      return places.find((one) => one.role === role && isNear(one.middle, there))?.patch;
    });
    if (!found.includes(undefined)) return new Map(found.map((patch, i) => [patch as number, i]));
  }
  throw new RangeError(`The patches ${patches.join(', ')} make no ${shape.kind}`);
}

/** The four directions a rectangle's sides run in, each as the direction that is across in the unit. */
function waysOf(drawing: Drawing, patch: number): readonly Point[] {
  const [a, b] = pointsOf(drawing, patch) as readonly [Point, Point];
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  const [x, y] = [(b.x - a.x) / length, (b.y - a.y) / length];
  return [
    { x, y },
    { x: -y, y: x },
    { x: -x, y: -y },
    { x: y, y: -x },
  ];
}

function pointsOf(drawing: Drawing, patch: number): readonly Point[] {
  return (drawing.patches[patch] as Drawing['patches'][number]).outline.map((vertex) => pointAt(drawing, vertex));
}

function roleOf(drawing: Drawing, patch: number): string {
  return (drawing.patches[patch] as Drawing['patches'][number]).role;
}

/** The middle of a rectangle, however it lies. */
function middleOf(points: readonly Point[]): Point {
  const { x, y, width, height } = boxAbout(points);
  return { x: x + width / 2, y: y + height / 2 };
}

function isNear(a: Point, b: Point): boolean {
  return Math.hypot(a.x - b.x, a.y - b.y) < MEANT;
}
