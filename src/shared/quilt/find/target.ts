import type { Inches } from '../../measure/inches.ts';
import { count, given, plus, type TracedSize, times } from '../../measure/traced.ts';

/** What a size is looked for: a finished width and height, with the sums that made them. */
export interface Target {
  readonly size: TracedSize;
}

/** A mattress that a quilt is to lie on. */
export interface Bed {
  readonly width: Inches;
  readonly length: Inches;
  /** How far the quilt hangs over both sides and the foot. */
  readonly drop: Inches;
  /** How much is tucked under and over the pillows at the head. */
  readonly tuck: Inches;
}

/** Two plain numbers, finished inches. */
export function plainTarget(width: Inches, height: Inches): Target {
  return { size: { width: given(width, 'asked for'), height: given(height, 'asked for') } };
}

/**
 * A quilt for a bed: over both sides and the foot it hangs down by the drop; at the head it reaches the end of the mattress and
 * as much further as is tucked about the pillows (common practice).
 */
export function bedTarget({ width, length, drop, tuck }: Bed): Target {
  const hangs = given(drop, 'drop');
  const across = drop === 0 ? [] : [times(count(2, ''), hangs)];
  const down = [...(drop === 0 ? [] : [hangs]), ...(tuck === 0 ? [] : [given(tuck, 'pillow tuck')])];
  return {
    size: { width: plus(given(width, 'mattress'), ...across), height: plus(given(length, 'mattress'), ...down) },
  };
}
