import type { Figure } from '../diagrams/figure.ts';
import { type Units, unitsOn } from '../measure/metric.ts';
import type { Traced } from '../measure/traced.ts';
import type { Pattern } from '../pattern/schema.ts';
import type { WorkedBlock, WorkedOut, WorkedSize } from '../workroom/workedOut.ts';
import type { CaptionedFigure, Step } from './book.ts';

/** What every section is written from. */
export interface Desk {
  readonly worked: WorkedOut;
  readonly pattern: Pattern;
  /** What lengths are said in, where letters of figures and words are made here. */
  readonly units: Units;
  readonly blocks: readonly WorkedBlock[];
  /** At least one. */
  readonly sizes: readonly WorkedSize[];
  /** The size the figures show where one must stand for all: the middle one. */
  readonly shown: WorkedSize;
  /** Numbers steps through the whole pattern, so that "step 12" means one thing. */
  number(steps: readonly Step[]): {
    readonly kind: 'steps';
    readonly steps: readonly Step[];
    readonly firstNumber: number;
  };
}

/** The desk laid for a pattern; null when no size of it can be laid out, for then there is nothing to write about. */
export function layDesk(worked: WorkedOut): Desk | null {
  const shown = worked.sizes[Math.floor((worked.sizes.length - 1) / 2)];
  if (shown === undefined) return null;
  let next = 1;
  return {
    worked,
    pattern: worked.pattern,
    units: unitsOn(worked.pattern.house.step),
    blocks: worked.blocks.filter(({ id }) => worked.sizes.some((size) => (size.quilt.counts[id] ?? 0) > 0)),
    sizes: worked.sizes,
    shown,
    number(steps) {
      const firstNumber = next;
      next += steps.length;
      return { kind: 'steps', steps, firstNumber };
    },
  };
}

/** The name of a fabric. */
export function fabricName(pattern: Pattern, id: string): string {
  return pattern.fabrics.find((fabric) => fabric.id === id)?.name ?? id;
}

/** The names of the sizes in order, as the key to numbers that stand side by side. */
export function sizeNames(desk: Desk): string {
  return desk.sizes.map(({ size }) => size.name).join(' · ');
}

/** A figure of one size, which is named under it when the pattern has others. */
export function shownFigure(desk: Desk, { size }: WorkedSize, figure: Figure): CaptionedFigure {
  return desk.sizes.length === 1 ? { figure } : { figure, caption: [size.name] };
}

/** Counts for each size under a step; in a pattern of one size the size need not be named. */
export function perSize(
  desk: Desk,
  label: string,
  counts: readonly (readonly [WorkedSize, Traced])[],
): NonNullable<Step['perSize']> {
  const one = desk.sizes.length === 1;
  return { label, values: counts.map(([{ size }, value]) => ({ size: one ? '' : size.name, value })) };
}

/** The names of some sizes when they are not all of the pattern's, for numbers that stand side by side; else null. */
export function namesOf(desk: Desk, sizes: readonly WorkedSize[]): readonly string[] | null {
  return sizes.length === desk.sizes.length ? null : sizes.map(({ size }) => size.name);
}

/** The sizes that take a block. */
export function sizesWith(desk: Desk, block: string): readonly WorkedSize[] {
  return desk.sizes.filter((size) => size.blocks.some(({ id }) => id === block));
}
