import { type Inches, MM_PER_INCH, same } from '../../measure/inches.ts';

/** The ruler marks lengths are looked for on, coarse to fine: inches to their sixty-fourths, then millimetres. */
const MARKS: readonly Inches[] = [1, 1 / 2, 1 / 4, 1 / 8, 1 / 16, 1 / 32, 1 / 64, 1 / MM_PER_INCH, 0.5 / MM_PER_INCH];

function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b);
}

/**
 * The longest step that every one of these lengths is a whole number of, so that they can be added as whole numbers.
 * @returns null when they lie on no common ruler marks
 */
export function commonStep(lengths: readonly Inches[]): Inches | null {
  const on = MARKS.find((mark) => lengths.every((length) => same(Math.round(length / mark) * mark, length)));
  if (on === undefined || lengths.length === 0) return null;
  return lengths.map((length) => Math.round(length / on)).reduce(commonDivisor, 0) * on;
}

/** Lengths as whole numbers on one scale. */
export interface Grid {
  readonly capacity: number;
  /** Taken up to a mark: what fits on the grid fits the cloth. */
  readonly widths: readonly number[];
  /** Taken down to a mark: what fits the cloth fits on the grid. The same numbers when all lie on common ruler marks. */
  readonly loose: readonly number[];
  readonly exact: boolean;
}

/** The finest scale worth working at: marks across the cloth. */
const FINEST = 4096;

/**
 * The widths of pieces, and of the cloth, on a common scale.
 * @param finest marks across the cloth up to which ruler marks are taken as they are
 */
export function gridOf(widths: readonly Inches[], width: Inches, finest = FINEST): Grid {
  const step = commonStep(widths);
  const exact = step !== null && width / step <= finest;
  const mark = exact ? step : width / FINEST;
  const tiny = 1e-5 / mark;
  const up = (w: Inches) => (exact ? Math.round(w / mark) : Math.ceil(w / mark - tiny));
  const down = (w: Inches) => (exact ? Math.round(w / mark) : Math.max(0, Math.floor(w / mark - tiny)));
  return { capacity: Math.floor(width / mark + tiny), widths: widths.map(up), loose: widths.map(down), exact };
}
