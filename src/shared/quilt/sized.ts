import type { Inches } from '../measure/inches.ts';
import type { TracedSize } from '../measure/traced.ts';
import type { Cut, MethodPlan, NamedMethod } from '../piecing/method.ts';
import type { Unit } from '../piecing/piecing.ts';

/** A block at the scale of one size. */
export interface SizedBlock {
  readonly id: string;
  /** Finished inches of one grid unit. */
  readonly grid: Inches;
  /** How many of this block the quilt takes. */
  readonly count: number;
  readonly units: readonly SizedUnit[];
  /** The block as the maker measures it before sewing it into the quilt. */
  readonly unfinished: TracedSize;
}

/** A distinct unit of a block at the scale of one size. */
export interface SizedUnit {
  readonly unit: Unit;
  readonly method: NamedMethod;
  /** Other methods that make it, for choosing. */
  readonly others: readonly NamedMethod[];
  readonly plan: MethodPlan;
  /** Inches added to its pieces so that there is more to trim, whichever method that trims is chosen. */
  readonly oversize: Inches;
  /** Units in one block, in the whole quilt. */
  readonly perBlock: number;
  /** Of those in one block, how many are turned a quarter, either way. */
  readonly perBlockOnSide: number;
  readonly needed: number;
  /** Of those needed, how many are sewn as mirror images, for reversed blocks. */
  readonly reversed: number;
  /** The units needed by the batches they come from: mirror images may take batches of their own. */
  readonly runs: readonly Run[];
}

/** Units that come from the same batches. */
export interface Run {
  /** Whether they are sewn as mirror images, for reversed blocks. */
  readonly mirrored: boolean;
  readonly needed: number;
  /** Units made before from the same batches, of this block or of others: what those leave over is used first. */
  readonly before: number;
}

/** Units by the batches they come from when they are made this way: where a batch has one hand, each hand has its own. */
export function runsOf({ hand }: MethodPlan, needed: number, reversed: number): readonly Run[] {
  if (hand === undefined) return [{ mirrored: false, needed, before: 0 }];
  const runs = [
    { mirrored: false, needed: needed - reversed, before: 0 },
    { mirrored: true, needed: reversed, before: 0 },
  ];
  return runs.filter((run) => run.needed > 0);
}

/**
 * Pieces of one cut for every unit, where each becomes one patch by itself; null where pieces are cut apart or sewn several at a
 * time, so that they come in whole batches.
 */
export function piecesInEach({ patches, stripSet, count }: Cut, plan: MethodPlan): number | null {
  return patches === 1 && stripSet === undefined ? count / plan.yield : null;
}

/** Batches made for a unit beyond those made before. */
export function batchesOf({ runs, plan }: Pick<SizedUnit, 'runs' | 'plan'>): number {
  const made = (units: number) => Math.ceil(units / plan.yield - 1e-9);
  return runs.reduce((sum, { before, needed }) => sum + made(before + needed) - made(before), 0);
}
