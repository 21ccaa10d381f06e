import { type Turn, turnBox, turnSize, UNTURNED } from '../drawing/turn.ts';
import type { Inches } from '../measure/inches.ts';
import type { Piecing, UnitKey } from '../piecing/piecing.ts';
import { leavesOf } from '../piecing/tree.ts';
import { areasOf, patchesByFabric } from './blockCloth.ts';
import type { Figure, Mark } from './figure.ts';
import { boxLine, type FabricOf, letter, middleOf } from './marks.ts';

export interface BlockFigureOptions {
  readonly turn?: Turn;
  /** A letter for each distinct unit, shown on every unit. */
  readonly letters?: Readonly<Record<UnitKey, string>>;
  /** Outlines the units as well as the patches. */
  readonly units?: boolean;
  readonly tone?: 'full' | 'pale';
  /** What the block is called, for those who cannot see it. */
  readonly name?: string;
}

/**
 * The finished block as patches.
 * @param grid finished inches of one grid unit
 */
export function blockFigure(
  piecing: Piecing,
  grid: Inches,
  fabricOf: FabricOf,
  options: BlockFigureOptions = {},
): Figure {
  const { turn = UNTURNED, letters = {}, units = false, tone = 'full', name = 'The block' } = options;
  const { drawing } = piecing;
  const [w, h] = [drawing.width * grid, drawing.height * grid];
  const { width, height } = turnSize(w, h, turn);
  const marks: Mark[] = [...areasOf(patchesByFabric(drawing, grid, fabricOf, turn), tone, 'patch')];
  const leaves = leavesOf(piecing.root).map((leaf) => {
    const { x, y, width, height } = leaf.box;
    return {
      key: leaf.unit,
      box: turnBox({ x: x * grid, y: y * grid, width: width * grid, height: height * grid }, turn, w, h),
    };
  });
  if (units) marks.push(...leaves.map(({ box }) => boxLine(box, 'unit')));
  marks.push(boxLine({ x: 0, y: 0, width, height }, 'unit'));
  for (const { key, box } of leaves) {
    const text = letters[key];
    if (text !== undefined) marks.push(letter(text, middleOf(box)));
  }
  return { width, height, marks, alt: `${name}, finished.` };
}
