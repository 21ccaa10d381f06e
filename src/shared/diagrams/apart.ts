import type { Box, Point } from '../drawing/turn.ts';
import type { Part, Ring, Rounds, Row } from '../piecing/piecing.ts';
import { type AnyLeaf, isLeaf } from '../piecing/tree.ts';
import type { Press, PressingPlan } from '../pressing/pressing.ts';
import type { Side } from '../recipe/schema.ts';

/** A leaf and how far a figure moves it from where it is sewn. */
export interface Placed<Leaf> {
  readonly leaf: Leaf;
  readonly by: Point;
}

/** One seam as a figure shows it: its middle once things are pulled apart, and the way it is pressed. */
export interface SeamSpot {
  /** The part whose seam it is, as a path of child indices. */
  readonly path: string;
  readonly middle: Point;
  readonly press: Press;
  /** Whether the seam runs up and down. */
  readonly upright: boolean;
}

export interface Apart<Leaf> {
  readonly leaves: readonly Placed<Leaf>[];
  readonly seams: readonly SeamSpot[];
}

export interface PullOptions {
  /** How far apart what a part joins is drawn, in the tree's own unit; 0 leaves it sewn together. Asked of every part. */
  gap(path: string): number;
  readonly pressing?: PressingPlan;
}

export const HERE: Point = { x: 0, y: 0 };

/** The path of a child. */
export function below(path: string, child: number): string {
  return path === '' ? String(child) : `${path}.${child}`;
}

/** A tree with its parts pulled apart about their middles, as much as each part's gap says; and its seams where they then are. */
export function pullApart<Leaf extends AnyLeaf>(
  part: Part<Leaf>,
  options: PullOptions,
  path = '',
  by: Point = HERE,
): Apart<Leaf> {
  if (isLeaf<Leaf>(part)) return { leaves: [{ leaf: part, by }], seams: [] };
  return part.kind === 'row' ? pullRow(part, options, path, by) : pullRounds(part, options, path, by);
}

function pullRow<Leaf extends AnyLeaf>(row: Row<Leaf>, options: PullOptions, path: string, by: Point): Apart<Leaf> {
  const gap = options.gap(path);
  const presses = seamsOf(options, path);
  const middle = (row.parts.length - 1) / 2;
  const spots = row.parts.map((_, i) => along(row, by, (i - middle) * gap));
  const parts = row.parts.map((part, i) => pullApart(part, options, below(path, i), spots[i]));
  const seams = row.parts.slice(1).flatMap((part, i) => {
    const press = presses[i];
    const at = along(row, by, (i + 0.5 - middle) * gap);
    return press === undefined
      ? []
      : [{ path, press, middle: shifted(startOf(row, part.box), at), upright: row.along === 'across' }];
  });
  return { leaves: parts.flatMap((one) => one.leaves), seams: [...seams, ...parts.flatMap((one) => one.seams)] };
}

function along<Leaf>(row: Row<Leaf>, { x, y }: Point, distance: number): Point {
  return row.along === 'across' ? { x: x + distance, y } : { x, y: y + distance };
}

/** The middle of the seam a part of a row begins with. */
function startOf<Leaf>(row: Row<Leaf>, { x, y, width, height }: Box): Point {
  return row.along === 'across' ? { x, y: y + height / 2 } : { x: x + width / 2, y };
}

function shifted(point: Point, by: Point): Point {
  return { x: point.x + by.x, y: point.y + by.y };
}

/** Strips, or the arms of a ring, move straight away from the core. */
function pullRounds<Leaf extends AnyLeaf>(
  rounds: Rounds<Leaf> | Ring<Leaf>,
  options: PullOptions,
  path: string,
  by: Point,
): Apart<Leaf> {
  const gap = options.gap(path);
  const presses = seamsOf(options, path);
  const core = pullApart(rounds.core, options, below(path, 0), by);
  const logs = rounds.logs.map(({ side, part }, i) =>
    pullApart(part, options, below(path, i + 1), outward(by, side, gap)),
  );
  const seams = rounds.logs.flatMap(({ side, part }, i) => {
    const press = presses[i];
    const middle = shifted(innerEdge(side, part.box), outward(by, side, gap / 2));
    return press === undefined ? [] : [{ path, press, middle, upright: side === 'left' || side === 'right' }];
  });
  return {
    leaves: [...core.leaves, ...logs.flatMap((one) => one.leaves)],
    seams: [...core.seams, ...seams, ...logs.flatMap((one) => one.seams)],
  };
}

/** A spot moved out to one side. */
export function outward({ x, y }: Point, side: Side, distance: number): Point {
  if (side === 'left') return { x: x - distance, y };
  if (side === 'right') return { x: x + distance, y };
  return { x, y: side === 'top' ? y - distance : y + distance };
}

/** The middle of the edge by which a strip on this side is sewn on. */
export function innerEdge(side: Side, { x, y, width, height }: Box): Point {
  if (side === 'left') return { x: x + width, y: y + height / 2 };
  if (side === 'right') return { x, y: y + height / 2 };
  return { x: x + width / 2, y: side === 'top' ? y + height : y };
}

function seamsOf({ pressing }: PullOptions, path: string): readonly Press[] {
  return pressing?.parts.find((part) => part.path === path)?.seams ?? [];
}
