import type { Point } from '../../../shared/drawing/turn.ts';
import type { Cell, Lattice } from './lattice.ts';

/** A lattice whose cells can be picked, and what happens then. */
export interface Picking {
  readonly lattice: Lattice;
  /** Width and height of the whole that is drawn beneath, in the lattice's units. */
  readonly width: number;
  readonly height: number;
  readonly picked: readonly Cell[];
  readonly onPick: (cells: readonly Cell[]) => void;
  /** A key pressed on what is picked; true when it did something. */
  readonly onKey?: ((key: string) => boolean) | undefined;
  /** A click beside the cells, such as on a border. */
  readonly onBeside?: ((at: Point) => void) | undefined;
}
