import type { Palette } from './palette.ts';

export type Family = 'Source Serif 4' | 'Source Sans 3';

/** How a run of text looks; sizes in points. */
export interface Style {
  readonly family: Family;
  readonly bold: boolean;
  readonly italics: boolean;
  readonly size: number;
  /** From baseline to baseline. */
  readonly leading: number;
  readonly colour: keyof Palette;
  /** Extra space between letters. */
  readonly tracking: number;
}

function serif(size: number, leading: number, more: Partial<Style> = {}): Style {
  return { family: 'Source Serif 4', bold: false, italics: false, size, leading, colour: 'ink', tracking: 0, ...more };
}

function sans(size: number, leading: number, more: Partial<Style> = {}): Style {
  return { ...serif(size, leading, more), family: 'Source Sans 3' };
}

/** The scale of the page: serif for words and titles, sans for charts, figures and feet. Nothing but figure letters is below 8 points. */
export const TYPE = {
  coverTitle: serif(44, 46, { bold: true, tracking: -0.6 }),
  sectionTitle: serif(24, 28, { bold: true, tracking: -0.2 }),
  heading: serif(13, 18, { bold: true }),
  lead: serif(12, 17),
  body: serif(10, 14),
  bodyStrong: serif(10, 14, { bold: true }),
  quiet: serif(8.5, 12, { colour: 'quiet' }),
  stepNumber: serif(20, 22, { colour: 'accent' }),
  chartTitle: sans(9.5, 13, { bold: true }),
  chartHead: sans(8.5, 11, { bold: true, colour: 'quiet' }),
  chart: sans(9.5, 13),
  chartGroup: sans(9.5, 13, { bold: true }),
  caption: sans(8.5, 11, { colour: 'quiet' }),
  perSize: sans(8.5, 12),
  coverFact: sans(11, 15.5),
  coverLabel: sans(9, 13, { bold: true, colour: 'quiet' }),
  label: sans(8.5, 12, { bold: true, colour: 'quiet' }),
  figureLetter: sans(7.5, 10, { bold: true }),
  foot: sans(8, 11, { colour: 'quiet' }),
  draft: sans(8, 11, { bold: true, colour: 'alarm' }),
} as const satisfies Record<string, Style>;

/** The same style at a smaller size, its leading in step. */
export function atSize(style: Style, size: number): Style {
  return { ...style, size, leading: (style.leading * size) / style.size };
}

/** Capitals are about two thirds of the type size in both families. */
const CAPITALS = 0.66;

/** From the top of a line to its baseline: capitals stand in the middle of their leading. */
export function baselineOf(style: { readonly size: number; readonly leading: number }): number {
  return (style.leading + CAPITALS * style.size) / 2;
}
