import type { Arrow, Hatch, Letter, LinePen } from './figure.ts';

/** 1 in = 72 pt (the PDF point, ISO 32000-1, 8.3.2.3). */
export const POINTS_PER_INCH = 72;

/**
 * The named paints of the house; each pen knows what they are on its sheet. Cloth stays what it is on a dark screen too, so
 * what lies on it has paints of its own: 'edge' outlines it, 'thread' is drawn on it, 'bare' is undyed cloth and what shows
 * through a wash. 'ink', 'walnut' and 'sheet' are for what stands on the sheet beside it.
 */
export type Paint = 'ink' | 'walnut' | 'madder' | 'sheet' | 'edge' | 'thread' | 'bare';

/** How a line is drawn, in points, whatever the scale of the figure. */
export interface LineWeight {
  readonly paint: Paint;
  readonly weight: number;
  /** Lengths of dash and gap; null is a whole line. A dash of no length with round ends is a dot. */
  readonly dash: readonly [number, number] | null;
  readonly round: boolean;
}

/** No PDF engine takes a dash of no length; this one is as good. */
export const DOT = 0.01;

export const LINES: Readonly<Record<LinePen, LineWeight>> = {
  patch: { paint: 'edge', weight: 0.5, dash: null, round: false },
  unit: { paint: 'edge', weight: 0.9, dash: null, round: false },
  cut: { paint: 'thread', weight: 0.6, dash: [3.4, 2], round: false },
  sew: { paint: 'thread', weight: 1, dash: [DOT, 2.1], round: true },
  marked: { paint: 'thread', weight: 0.4, dash: null, round: false },
  measure: { paint: 'walnut', weight: 0.4, dash: null, round: false },
  misfit: { paint: 'madder', weight: 1.8, dash: null, round: false },
};

/** An arrow's shaft and its solid head, in points. */
export interface ArrowWeight {
  readonly weight: number;
  readonly headLength: number;
  readonly headWidth: number;
}

export const ARROWS: Readonly<Record<Arrow['means'], ArrowWeight>> = {
  press: { weight: 0.9, headLength: 4, headWidth: 3.6 },
  turn: { weight: 0.9, headLength: 4, headWidth: 3.6 },
  next: { weight: 0.9, headLength: 5.5, headWidth: 5 },
};

/** A rim of bare sheet about arrows and letters, so that they read on dark cloth too. */
export const RIM = 1;

export interface LetterWeight {
  readonly size: number;
  readonly paint: Paint;
}

export const LETTERS: Readonly<Record<Letter['style'], LetterWeight>> = {
  letter: { size: 7.5, paint: 'ink' },
  measure: { size: 7.5, paint: 'ink' },
  number: { size: 7.5, paint: 'ink' },
};

/** The share of cloth a hatch covers with ink: by how close it is, whether of lines, crossed lines or dots. */
export function coverage({ kind, gap }: Hatch): number {
  if (kind === 'none') return 0;
  if (kind === 'solid') return 1;
  return gap < 2.4 ? 0.54 : gap < 5 ? 0.2 : 0.06;
}

/** Over colour a hatch is finer: the colour says already how dark the cloth is. */
const OVER_COLOUR = 0.45;

/** The stroke of a hatch in points, such that it covers its share: light, medium and dark stay apart. */
export function hatchWeight(hatch: Hatch, overColour: boolean): number {
  const { kind, gap } = hatch;
  const covered = coverage(hatch) * (overColour && gap < 5 ? OVER_COLOUR : 1);
  if (kind === 'dots') return gap * Math.sqrt((4 * covered) / Math.PI);
  return gap * (kind === 'crossed' ? 1 - Math.sqrt(1 - covered) : covered);
}
