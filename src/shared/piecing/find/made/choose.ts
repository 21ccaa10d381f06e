import type { Drawing } from '../../../drawing/drawing.ts';
import { MEANT } from '../../../drawing/near.ts';
import type { Point } from '../../../drawing/turn.ts';
import { described, keyed } from '../../distinct.ts';
import type { SeamTree, SeamUnit } from '../../seamTree.ts';
import type { TradeShape } from '../../tradeUnit.ts';
import { total, treeCost, unitCost } from '../cost.ts';
import { recogniseHeld } from '../recognise.ts';
import { type PinnedSeam, seamsFor } from '../seams/seams.ts';
import { contract, expand } from './contract.ts';
import { rectanglesIn } from './rectangles.ts';

/** Of so many different units each is tried first, and done without. */
const MOST_KINDS = 6;

/**
 * How the patches of a drawing are sewn together when seams may run at any angle, with units of the trade made first wherever
 * they make it cheaper. Which units are taken is tried several ways, each sewn out and priced as `cost.ts` says.
 */
export function seamsWithUnits(drawing: Drawing, pinned: readonly PinnedSeam[] = []): SeamTree {
  const plain = seamsFor(drawing, pinned);
  const candidates = unitsIn(drawing).filter((unit) => !pinned.some((seam) => isWithin(drawing, unit, seam)));
  if (candidates.length === 0) return plain;
  let best = { tree: plain, cost: total(treeCost(plain)) };
  const tried = new Set<string>();
  for (const units of choices(candidates)) {
    const key = units
      .map(({ patches }) => patches.join(' '))
      .sort()
      .join('; ');
    if (units.length === 0 || tried.has(key)) continue;
    tried.add(key);
    const tree = sewnFrom(drawing, units, pinned);
    const cost = total(treeCost(tree));
    // For one price, a unit of the trade rather than its patches one by one; more units rather than fewer.
    if (cost < best.cost - 1e-9 || (best.tree === plain && cost < best.cost + 1e-9)) best = { tree, cost };
  }
  return best.tree;
}

/** The tree of a drawing in which these units are made first. */
export function sewnFrom(drawing: Drawing, units: readonly SeamUnit[], pinned: readonly PinnedSeam[] = []): SeamTree {
  const contracted = contract(drawing, units);
  return expand(seamsFor(contracted.drawing, pinned), contracted);
}

/** Every unit of the trade in a drawing that is none itself, whichever way it lies; they may overlap. */
export function unitsIn(drawing: Drawing): readonly SeamUnit[] {
  const found = new Map<string, SeamUnit>();
  for (const held of rectanglesIn(drawing)) {
    if (held.patches.length === drawing.patches.length) continue;
    const leaf = recogniseHeld(held);
    if (leaf === null || leaf.shape.kind === 'pieced' || isOffRuler(leaf.shape)) continue;
    const patches = held.patches.map(({ index }) => index);
    // Of one square seen two ways, as a square in a square may be, the first will do.
    const key = patches.join(' ');
    if (!found.has(key)) found.set(key, { kind: 'unit', shape: described(leaf.shape, leaf.turn), patches });
  }
  return [...found.values()];
}

/**
 * Whether a unit is sewn from strips or squares that no ruler has: they are not trimmed, so that what each is off adds up. Cut round
 * templates they come out true.
 */
function isOffRuler(shape: TradeShape): boolean {
  const cells = cellsOf(shape);
  if (cells === null) return false;
  const sides = [shape.width / cells.columns, shape.height / cells.rows];
  return sides.some((side) => Math.abs(side * PARTS - Math.round(side * PARTS)) > PARTS * MEANT);
}

/** Sides of squares and strips that fall on a ruler at some size of the block are so many parts of a grid unit. */
const PARTS = 24;

function cellsOf(shape: TradeShape): { readonly columns: number; readonly rows: number } | null {
  switch (shape.kind) {
    case 'four-patch':
      return { columns: 2, rows: 2 };
    case 'nine-patch':
      return { columns: 3, rows: 3 };
    case 'checkerboard':
      return shape;
    case 'rails':
      return { columns: 1, rows: shape.roles.length };
    default:
      return null;
  }
}

/** What a unit saves over its patches sewn one by one. */
function saving({ shape, patches }: SeamUnit): number {
  const oneByOne = 2 * patches.length - 1;
  return oneByOne - unitCost(shape, patches.length).effort - 0.5;
}

/** Sets of units that do not overlap, each the units that save most first, with one kind of unit preferred or left out. */
function choices(candidates: readonly SeamUnit[]): readonly (readonly SeamUnit[])[] {
  const named = candidates.map((unit) => ({ unit, key: keyOf(unit.shape), saves: saving(unit) }));
  const inOrder = named.sort((p, q) => q.saves - p.saves);
  const kinds = [...new Set(inOrder.map(({ key }) => key))].slice(0, MOST_KINDS);
  const preferring = kinds.map((kind) => [
    ...inOrder.filter(({ key }) => key === kind),
    ...inOrder.filter(({ key }) => key !== kind),
  ]);
  const without = kinds.map((kind) => inOrder.filter(({ key }) => key !== kind));
  const only = kinds.map((kind) => inOrder.filter(({ key }) => key === kind));
  return [inOrder, ...preferring, ...without, ...only].map((order) => disjoint(order.map(({ unit }) => unit)));
}

function keyOf(shape: TradeShape): string {
  return keyed(shape).key;
}

/** One after another, those that do not overlap any taken before. */
function disjoint(units: readonly SeamUnit[]): readonly SeamUnit[] {
  const taken = new Set<number>();
  return units.filter(({ patches }) => {
    if (patches.some((patch) => taken.has(patch))) return false;
    for (const patch of patches) taken.add(patch);
    return true;
  });
}

/** Whether a seam the designer wants sewn would lie inside a unit: its middle does. */
function isWithin(drawing: Drawing, unit: SeamUnit, [a, b]: PinnedSeam): boolean {
  const own = contract(drawing, [unit]).drawing.patches.at(-1)?.outline ?? [];
  const middle: Point = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  const corners = own.map((vertex) => drawing.points[vertex] as Point);
  return corners.every((from, i) => {
    const to = corners[(i + 1) % corners.length] as Point;
    return (to.x - from.x) * (middle.y - from.y) - (to.y - from.y) * (middle.x - from.x) > 1e-6;
  });
}
