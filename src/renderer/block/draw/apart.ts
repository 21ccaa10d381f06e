import { pullApart } from '../../../shared/diagrams/apart.ts';
import { outlinePoints } from '../../../shared/drawing/curve.ts';
import { type Drawing, doubleArea } from '../../../shared/drawing/drawing.ts';
import type { Box, Point } from '../../../shared/drawing/turn.ts';
import type { BlockPart, Piecing, Unit, UnitLeaf } from '../../../shared/piecing/piecing.ts';
import { patchesOf, type SeamTree } from '../../../shared/piecing/seamTree.ts';
import { childrenOf, isLeaf } from '../../../shared/piecing/tree.ts';

/** How many times a block is taken apart until only patches are left: first between its parts, then within its units. */
export interface Stages {
  readonly between: number;
  readonly within: number;
}

/** A block taken apart: how far each patch has moved from where it is sewn, and what all of it then covers. */
export interface TakenApart {
  readonly by: readonly Point[];
  readonly box: Box;
}

const HERE: Point = { x: 0, y: 0 };
/** The gap between two parts, as a share of the longer side of what they make, and of the whole block at least. */
const GAP = 0.1;
const LEAST_GAP = 0.035;

export function stagesOf({ root, units }: Piecing): Stages {
  const within = Math.max(
    0,
    ...units.map((unit) => (unit.kind === 'pieced' ? depthOf(unit.seams) : isWhole(unit) ? 0 : 1)),
  );
  return { between: partDepth(root), within };
}

function isWhole({ kind }: Unit): boolean {
  return kind === 'plain' || kind === 'log';
}

function partDepth(part: BlockPart): number {
  const inner = childrenOf<UnitLeaf>(part).map(partDepth);
  return inner.length === 0 ? 0 : 1 + Math.max(...inner);
}

/** A unit of the trade inside opens at one stage, all its patches at once. */
function depthOf(tree: SeamTree): number {
  if (tree.kind === 'join') return 1 + Math.max(...tree.parts.map(depthOf));
  return tree.kind === 'unit' ? 1 : 0;
}

/**
 * The block with its seams opened in the order opposite to sewing: what is sewn last comes apart first.
 * @param stage how many stages are open, from 0 to all of them; parts of a stage open by that part of their gap
 */
export function takenApart(piecing: Piecing, stage: number): TakenApart {
  const { drawing, root, units } = piecing;
  const { between } = stagesOf(piecing);
  const least = LEAST_GAP * Math.max(drawing.width, drawing.height);
  const boxes = boxesOf(root);
  const gapAt = (length: number, depth: number) => Math.max(least, GAP * length) * held(stage - depth);
  const gap = (path: string) => {
    const box = boxes.get(path) ?? root.box;
    return gapAt(Math.max(box.width, box.height), path === '' ? 0 : path.split('.').length);
  };
  const unitOf = new Map(units.map((unit) => [unit.key, unit]));
  const by: Point[] = drawing.patches.map(() => HERE);
  for (const { leaf, by: moved } of pullApart<UnitLeaf>(root, { gap }).leaves) {
    const inside = withinUnit(drawing, leaf, unitOf.get(leaf.unit), (length, depth) => gapAt(length, between + depth));
    leaf.patches.forEach((patch, i) => {
      by[patch] = plus(moved, inside[i] ?? HERE);
    });
  }
  return { by, box: coverOf(drawing, by) };
}

function held(open: number): number {
  return Math.max(0, Math.min(1, open));
}

function plus(a: Point, b: Point): Point {
  return { x: a.x + b.x, y: a.y + b.y };
}

/** The box of every part by its path. */
function boxesOf(root: BlockPart): ReadonlyMap<string, Box> {
  const found = new Map<string, Box>();
  const look = (part: BlockPart, path: string): void => {
    found.set(path, part.box);
    if (isLeaf<UnitLeaf>(part)) return;
    childrenOf<UnitLeaf>(part).forEach((inner, i) => {
      look(inner, path === '' ? String(i) : `${path}.${i}`);
    });
  };
  look(root, '');
  return found;
}

type GapOf = (length: number, depth: number) => number;

/** How far each patch of a unit moves from where it is in the unit. */
function withinUnit(drawing: Drawing, leaf: UnitLeaf, unit: Unit | undefined, gap: GapOf): readonly Point[] {
  const middles = leaf.patches.map((patch) => middleOf(drawing, patch));
  const moved: Point[] = leaf.patches.map(() => HERE);
  const length = Math.max(leaf.box.width, leaf.box.height);
  if (unit?.kind === 'pieced') {
    openSeams(unit.seams, middles, gap, length, 0, moved);
    return moved;
  }
  const middle = { x: leaf.box.x + leaf.box.width / 2, y: leaf.box.y + leaf.box.height / 2 };
  return middles.map((at) => away(middle, at, gap(length, 0) / 2));
}

/** Opens a tree of seams: the two parts of each join move away from one another. */
function openSeams(
  tree: SeamTree,
  middles: readonly Point[],
  gap: GapOf,
  length: number,
  depth: number,
  moved: Point[],
): void {
  if (tree.kind === 'unit') openUnit(tree.patches, middles, gap(length, depth) / 2, moved);
  if (tree.kind !== 'join') return;
  const [first, second] = tree.parts;
  const [a, b] = [meanOf(patchesOf(first), middles), meanOf(patchesOf(second), middles)];
  const open = gap(length, depth) / 2;
  for (const patch of patchesOf(first)) moved[patch] = plus(moved[patch] ?? HERE, away(b, a, open));
  for (const patch of patchesOf(second)) moved[patch] = plus(moved[patch] ?? HERE, away(a, b, open));
  for (const part of tree.parts) openSeams(part, middles, gap, length, depth + 1, moved);
}

function openUnit(patches: readonly number[], middles: readonly Point[], open: number, moved: Point[]): void {
  const middle = meanOf(patches, middles);
  for (const patch of patches) {
    moved[patch] = plus(moved[patch] ?? HERE, away(middle, middles[patch] ?? HERE, open));
  }
}

function meanOf(patches: readonly number[], middles: readonly Point[]): Point {
  const all = patches.map((patch) => middles[patch] ?? HERE);
  const sum = all.reduce(plus, HERE);
  return { x: sum.x / all.length, y: sum.y / all.length };
}

/** A move straight away from a place, as far as said; none when the two are one. */
function away(from: Point, at: Point, far: number): Point {
  const [x, y] = [at.x - from.x, at.y - from.y];
  const length = Math.hypot(x, y);
  return length < 1e-9 ? HERE : { x: (x / length) * far, y: (y / length) * far };
}

/** The centre of gravity of a patch. */
function middleOf(drawing: Drawing, patch: number): Point {
  const outline = outlinePoints(drawing, drawing.patches[patch] as Drawing['patches'][number], 4);
  const area = doubleArea(outline);
  const sum = outline.reduce((so, a, i) => {
    const b = outline[(i + 1) % outline.length] as Point;
    const cross = a.x * b.y - b.x * a.y;
    return { x: so.x + (a.x + b.x) * cross, y: so.y + (a.y + b.y) * cross };
  }, HERE);
  return { x: sum.x / (3 * area), y: sum.y / (3 * area) };
}

function coverOf(drawing: Drawing, by: readonly Point[]): Box {
  const all = drawing.patches.flatMap(({ outline }, i) =>
    outline.map((vertex) => plus(drawing.points[vertex] ?? HERE, by[i] ?? HERE)),
  );
  const xs = all.map(({ x }) => x);
  const ys = all.map(({ y }) => y);
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  return { x: left, y: top, width: Math.max(...xs) - left, height: Math.max(...ys) - top };
}
