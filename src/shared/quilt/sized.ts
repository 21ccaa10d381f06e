import type { Inches } from '../measure/inches.ts';
import type { TracedSize } from '../measure/traced.ts';
import type { MethodPlan, NamedMethod } from '../piecing/method.ts';
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
  /** Units in one block, in the whole quilt; batches made; units left over. */
  readonly perBlock: number;
  readonly needed: number;
  readonly batches: number;
  readonly spare: number;
}
