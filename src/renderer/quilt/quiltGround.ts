import type { Box, Point } from '../../shared/drawing/turn.ts';
import { clip, type HalfPlane } from '../../shared/quilt/onPoint/clip.ts';
import { turnedAbout } from '../../shared/quilt/onPoint/frame.ts';
import { outlineOf } from '../../shared/quilt/onPoint/pieces.ts';
import type { BlockLeaf, Quilt } from '../../shared/quilt/quilt.ts';
import type { Ground } from '../parts/lattice/ground.ts';
import type { Cell } from '../parts/lattice/lattice.ts';

/** The blocks of the setting; the units of a border stand in no place. */
export function settingBlocks({ blocks }: Quilt): readonly BlockLeaf[] {
  return blocks.filter(({ border }) => border === undefined);
}

const known = new WeakMap<Quilt, Ground>();

/** The blocks of a quilt as cells to pick: straight, on point, in strips, or of several sizes. */
export function quiltGround(quilt: Quilt): Ground {
  const ground = known.get(quilt) ?? groundOf(settingBlocks(quilt));
  known.set(quilt, ground);
  return ground;
}

function groundOf(blocks: readonly BlockLeaf[]): Ground {
  const at = new Map(blocks.map((leaf) => [keyOf(leaf), leaf]));
  const walk = walkOver(blocks);
  return {
    columns: 1 + Math.max(0, ...blocks.map(({ column }) => column)),
    rows: 1 + Math.max(0, ...blocks.map(({ row }) => row)),
    at: (point) => cellOf(blocks.find((leaf) => holds(leaf, point))),
    touching: (a, b) => cells(blocks.filter((leaf) => touches(leaf, a, b))),
    between: (a, b) => cells(betweenThem(blocks, at.get(keyOf(a)), at.get(keyOf(b)))),
    all: () => cells(blocks),
    step: (cell, key) => (key in STEPS ? walk(cell, key) : null),
    hold: (cell) => (at.has(keyOf(cell)) ? cell : (nearest(blocks, cell) ?? cell)),
    lie: (cell) => at.get(keyOf(cell)) ?? null,
  };
}

function keyOf({ column, row }: Cell): string {
  return `${column} ${row}`;
}

function cellOf(leaf: BlockLeaf | undefined): Cell | null {
  return leaf === undefined ? null : { column: leaf.column, row: leaf.row };
}

function cells(leaves: readonly BlockLeaf[]): readonly Cell[] {
  return leaves.map(({ column, row }) => ({ column, row }));
}

function middleOf({ box }: { readonly box: Box }): Point {
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** A point of the quilt as it lies in a block's own upright box. */
export function inUprightBox(leaf: Pick<BlockLeaf, 'box' | 'tilt'>, point: Point): Point {
  return leaf.tilt === undefined ? point : turnedAbout(point, middleOf(leaf), -leaf.tilt);
}

export function holds(leaf: Pick<BlockLeaf, 'box' | 'tilt'>, point: Point): boolean {
  const { x, y } = inUprightBox(leaf, point);
  const { box } = leaf;
  return x >= box.x && y >= box.y && x < box.x + box.width && y < box.y + box.height;
}

function touches(leaf: BlockLeaf, a: Point, b: Point): boolean {
  const planes: readonly HalfPlane[] = [
    { a: -1, b: 0, c: -Math.min(a.x, b.x) },
    { a: 1, b: 0, c: Math.max(a.x, b.x) },
    { a: 0, b: -1, c: -Math.min(a.y, b.y) },
    { a: 0, b: 1, c: Math.max(a.y, b.y) },
  ];
  return clip(outlineOf(leaf), planes).length > 2;
}

/** Blocks whose middles lie in the rectangle of two others' middles. */
function betweenThem(
  blocks: readonly BlockLeaf[],
  a: BlockLeaf | undefined,
  b: BlockLeaf | undefined,
): readonly BlockLeaf[] {
  if (a === undefined || b === undefined) return [];
  const [from, to] = [middleOf(a), middleOf(b)];
  const near = 1e-6;
  const among = (value: number, one: number, other: number) =>
    value >= Math.min(one, other) - near && value <= Math.max(one, other) + near;
  return blocks.filter((leaf) => {
    const { x, y } = middleOf(leaf);
    return among(x, from.x, to.x) && among(y, from.y, to.y);
  });
}

function nearest(blocks: readonly BlockLeaf[], { column, row }: Cell): Cell | null {
  const far = (leaf: BlockLeaf) => 1000 * Math.abs(leaf.row - row) + Math.abs(leaf.column - column);
  const [first, ...rest] = blocks;
  if (first === undefined) return null;
  return cellOf(rest.reduce((best, leaf) => (far(leaf) < far(best) ? leaf : best), first));
}

/** Whether a key goes along a row or from row to row, and how far. */
const STEPS: Readonly<Record<string, { readonly along: 'row' | 'column'; readonly by: number }>> = {
  ArrowLeft: { along: 'row', by: -1 },
  ArrowRight: { along: 'row', by: 1 },
  ArrowUp: { along: 'column', by: -1 },
  ArrowDown: { along: 'column', by: 1 },
  Home: { along: 'row', by: -Infinity },
  End: { along: 'row', by: Infinity },
  PageUp: { along: 'column', by: -Infinity },
  PageDown: { along: 'column', by: Infinity },
};

/** From block to block by the arrow keys: along its row, and to the block of the next row that lies nearest. */
function walkOver(blocks: readonly BlockLeaf[]): (cell: Cell, key: string) => Cell {
  const columnsIn = grouped(blocks, 'row', 'column');
  const rows = [...columnsIn.keys()].sort((a, b) => a - b);
  return (cell, key) => {
    const { along, by } = STEPS[key] as (typeof STEPS)[string];
    const own = columnsIn.get(cell.row) ?? [];
    if (along === 'row') return { ...cell, column: stepIn(own, cell.column, by) };
    const row = stepIn(rows, cell.row, by);
    return { row, column: nearestIn(columnsIn.get(row) ?? [], cell.column) };
  };
}

function grouped(
  blocks: readonly BlockLeaf[],
  by: 'row' | 'column',
  of: 'row' | 'column',
): ReadonlyMap<number, readonly number[]> {
  const groups = Map.groupBy(blocks, (leaf) => leaf[by]);
  return new Map([...groups].map(([at, leaves]) => [at, leaves.map((leaf) => leaf[of]).sort((a, b) => a - b)]));
}

function stepIn(sorted: readonly number[], from: number, by: number): number {
  const at = Math.max(0, sorted.indexOf(from));
  return sorted[Math.max(0, Math.min(sorted.length - 1, at + by))] ?? from;
}

function nearestIn(sorted: readonly number[], to: number): number {
  const [first = to] = sorted;
  return sorted.reduce((best, one) => (Math.abs(one - to) < Math.abs(best - to) ? one : best), first);
}
