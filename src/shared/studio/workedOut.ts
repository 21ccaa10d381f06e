import type { Cloth } from '../cloth/cloth.ts';
import type { Finding } from '../measure/finding.ts';
import type { Inches } from '../measure/inches.ts';
import type { TracedSize } from '../measure/traced.ts';
import type { Pattern, Size } from '../pattern/schema.ts';
import type { Method, MethodPlan } from '../piecing/method.ts';
import type { Piecing, Unit } from '../piecing/piecing.ts';
import type { PressingPlan } from '../pressing/pressing.ts';
import type { Quilt } from '../quilt/quilt.ts';

/** Everything that follows from a pattern: nothing here is stored. */
export interface WorkedOut {
  readonly pattern: Pattern;
  /** The blocks that lower to a drawing and a piecing, by letter order. */
  readonly blocks: readonly WorkedBlock[];
  /** One for each size that can be laid out at all, in the pattern's order. */
  readonly sizes: readonly WorkedSize[];
  /** Of the document, the blocks and every size. */
  readonly findings: readonly Finding[];
}

/** A block without regard to size. */
export interface WorkedBlock {
  readonly id: string;
  readonly name: string;
  readonly piecing: Piecing;
  readonly pressing: PressingPlan;
  /** Each role of the recipe to the pattern's fabric. */
  readonly fabricOf: Readonly<Record<string, string>>;
}

/** One size, worked out. */
export interface WorkedSize {
  readonly size: Size;
  readonly quilt: Quilt;
  readonly blocks: readonly SizedBlock[];
  readonly pressing: PressingPlan;
  readonly cloth: Cloth;
  readonly findings: readonly Finding[];
}

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
  readonly method: Method;
  /** Other methods that make it, for choosing. */
  readonly others: readonly Method[];
  readonly plan: MethodPlan;
  /** Units in one block, in the whole quilt; batches made; units left over. */
  readonly perBlock: number;
  readonly needed: number;
  readonly batches: number;
  readonly spare: number;
}
