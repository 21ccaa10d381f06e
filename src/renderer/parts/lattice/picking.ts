import type { Point } from '../../../shared/drawing/turn.ts';
import type { Ground } from './ground.ts';
import type { Cell } from './lattice.ts';

/** What becomes of what is picked. */
export interface PickActs {
  /** Width and height of the whole that is drawn beneath, in the ground's units. */
  readonly width: number;
  readonly height: number;
  readonly picked: readonly Cell[];
  readonly onPick: (cells: readonly Cell[]) => void;
  /** A key pressed on what is picked; true when it did something. */
  readonly onKey?: ((key: string) => boolean) | undefined;
  /** A click beside the cells, such as on a border. */
  readonly onBeside?: ((at: Point) => void) | undefined;
  /** The one picked cell was drawn onto another; left out, drawing from it draws a box like any other. */
  readonly onSwap?: ((a: Cell, b: Cell) => void) | undefined;
  /** A brush is held: the pointer paints along its way, and Enter paints where the keys are, instead of picking. */
  readonly onPaint?: ((way: readonly Point[]) => void) | undefined;
}

/** Cells that can be picked, and what happens then. */
export interface Picking extends PickActs {
  readonly ground: Ground;
}
