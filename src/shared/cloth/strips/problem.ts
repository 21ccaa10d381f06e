import type { Inches } from '../../measure/inches.ts';
import { type Grid, gridOf } from './grid.ts';
import { type Kind, type Lie, liesOf, type Packed, packed } from './kinds.ts';

/** What is to be cut, from cloth how wide, and every way it may lie. */
export interface Problem {
  readonly kinds: readonly Kind[];
  readonly width: Inches;
  /** Lowest first. */
  readonly lies: readonly Lie[];
  /** Indices into `lies`, for each kind, lowest first. */
  readonly liesOfKind: readonly (readonly number[])[];
  /** The widths of `lies` as whole numbers. */
  readonly grid: Grid;
}

/**
 * @param finest marks across the cloth that are worth working at; left out, what a live plan may
 * @throws RangeError when a kind is wider than the cloth however it lies: whoever asks must have joined or refused it
 */
export function problemOf(kinds: readonly Kind[], width: Inches, finest?: number): Problem {
  const lies = liesOf(kinds, width);
  const liesOfKind = kinds.map((): number[] => []);
  lies.forEach((lie, index) => {
    liesOfKind[lie.kind]?.push(index);
  });
  const lost = liesOfKind.findIndex((ways) => ways.length === 0);
  if (lost >= 0) throw new RangeError(`A piece ${kinds[lost]?.width} wide does not lie across cloth ${width} wide`);
  const grid = gridOf(
    lies.map((lie) => lie.width),
    width,
    finest,
  );
  return { kinds, width, lies, liesOfKind, grid };
}

/** The strip that holds so many of each lie. */
export function stripOf(problem: Problem, counts: ArrayLike<number>, times: number): Packed {
  return packed(
    problem.lies.map((lie, index) => ({ lie, count: counts[index] ?? 0 })),
    times,
  );
}

/** How many pieces of each kind are still to be cut. */
export type Left = number[];

/** How often a strip with these counts of each lie can still be cut, and takes them off what is left. */
export function takeOff(
  problem: Problem,
  left: Left,
  counts: ArrayLike<number>,
  most = Number.POSITIVE_INFINITY,
): number {
  const each = new Array<number>(left.length).fill(0);
  problem.lies.forEach((lie, index) => {
    each[lie.kind] = (each[lie.kind] ?? 0) + (counts[index] ?? 0);
  });
  const times = each.reduce(
    (least, n, kind) => (n > 0 ? Math.min(least, Math.floor((left[kind] ?? 0) / n)) : least),
    most,
  );
  each.forEach((n, kind) => {
    left[kind] = (left[kind] ?? 0) - n * times;
  });
  return times;
}
