import { gridSpans } from '../../shared/piecing/gridSpans.ts';
import type { UnitLeaf } from '../../shared/piecing/piecing.ts';
import { leavesOf } from '../../shared/piecing/tree.ts';
import type { WorkedBlock } from '../../shared/workroom/workedOut.ts';
import { type Cell, cellAt, edges, type Lattice, sameCell } from '../parts/lattice/lattice.ts';
import type { ShownBlock } from './useShownBlock.ts';

/** Finished inches of one grid unit in the size looked at; at the recipe's usual size where no size has the block. */
export function gridInches({ sized, recipe }: ShownBlock, block: WorkedBlock): number {
  return sized?.grid ?? (recipe?.finished ?? block.piecing.drawing.width) / block.piecing.drawing.width;
}

/** The cells of a block's grid in finished inches; null when its recipe is no grid. */
export function cellLattice({ recipe, choice }: ShownBlock, block: WorkedBlock, grid: number): Lattice | null {
  const spans = recipe === undefined ? null : gridSpans(recipe, choice.parameters);
  if (spans === null) return null;
  const total = spans.columns.reduce((sum, span) => sum + span, 0);
  const inches = (span: number) => (span * block.piecing.drawing.width * grid) / total;
  return { xs: edges(0, spans.columns.map(inches)), ys: edges(0, spans.rows.map(inches)) };
}

function middleOf({ box }: UnitLeaf, grid: number) {
  return { x: (box.x + box.width / 2) * grid, y: (box.y + box.height / 2) * grid };
}

/** The keys of the units that stand in these cells, each once. */
export function unitsIn(cells: readonly Cell[], lattice: Lattice, block: WorkedBlock, grid: number): readonly string[] {
  const inside = leavesOf(block.piecing.root).filter((leaf) => {
    const at = cellAt(lattice, middleOf(leaf, grid));
    return at !== null && cells.some((cell) => sameCell(cell, at));
  });
  return [...new Set(inside.map(({ unit }) => unit))];
}

/** The unit under a point of the block, in finished inches. */
export function unitAt(
  point: { readonly x: number; readonly y: number },
  block: WorkedBlock,
  grid: number,
): string | null {
  const [x, y] = [point.x / grid, point.y / grid];
  const under = leavesOf(block.piecing.root).find(
    ({ box }) => x >= box.x && y >= box.y && x < box.x + box.width && y < box.y + box.height,
  );
  return under?.unit ?? null;
}
