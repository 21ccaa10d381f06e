import type { Cut } from '../piecing/method.ts';
import type { SizedUnit } from '../quilt/sized.ts';

/** One cut of one unit in one size: what is cut for the whole quilt. */
export interface UnitCut {
  readonly block: string;
  readonly sized: SizedUnit;
  readonly cut: Cut;
  readonly letter: string;
  readonly fabric: string;
}
