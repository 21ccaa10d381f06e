import type { Figure, Ink } from '../diagrams/figure.ts';
import type { Finding } from '../measure/finding.ts';
import type { Units } from '../measure/metric.ts';
import type { Traced } from '../measure/traced.ts';

/**
 * The written pattern as data: what is printed, in order, before anybody has chosen paper or type. Numbers are fields
 * bound to the model, so a sentence, a chart and a figure cannot disagree.
 */
export interface Book {
  readonly title: string;
  readonly designer: string;
  /** "Edition 2" */
  readonly edition: string;
  /** ISO date of the edition. */
  readonly date: string;
  readonly language: string;
  readonly sections: readonly Section[];
  readonly inks: readonly Ink[];
  readonly findings: readonly Finding[];
}

/** A section begins with a heading that is also a bookmark. */
export interface Section {
  readonly id: SectionId;
  readonly title: string;
  /** Starts a new page. */
  readonly newPage: boolean;
  readonly blocks: readonly Block[];
}

export type SectionId =
  | 'cover'
  | 'before-you-buy'
  | 'before-you-begin'
  | 'fabric'
  | 'cutting'
  | 'units'
  | 'blocks'
  | 'quilt'
  | 'borders'
  | 'finishing'
  | 'templates'
  | 'colouring'
  | 'rights'
  /** Of a kit sheet, which has no other. */
  | 'kit';

/** One thing on the page, kept whole unless it is a table. */
export type Block =
  | {
      readonly kind: 'cover';
      /** What its sizes are printed in; left out, inches. */
      readonly units?: Units;
      readonly figure: Figure;
      readonly sizes: readonly CoverSize[];
      readonly skills: readonly string[];
    }
  | { readonly kind: 'heading'; readonly text: string }
  | { readonly kind: 'words'; readonly text: Words; readonly tone: 'body' | 'lead' | 'quiet' }
  | { readonly kind: 'list'; readonly items: readonly Words[] }
  | { readonly kind: 'chart'; readonly chart: Chart }
  | { readonly kind: 'steps'; readonly steps: readonly Step[]; readonly firstNumber: number }
  | { readonly kind: 'figures'; readonly figures: readonly CaptionedFigure[]; readonly sameScale: boolean }
  | { readonly kind: 'caution'; readonly title: string; readonly items: readonly Words[] }
  | { readonly kind: 'whole-page-figure'; readonly figure: Figure; readonly caption: Words }
  | { readonly kind: 'test-square'; readonly side: Traced; readonly units?: Units }
  /**
   * Figures to be cut out or sewn on, each at its true size, with a square of known length to measure on every page of them. One
   * larger than the page is split over several sheets with marks to join them by.
   */
  | {
      readonly kind: 'true-size';
      readonly words: Words;
      readonly side: Traced;
      readonly units?: Units;
      readonly figures: readonly CaptionedFigure[];
    };

export interface CoverSize {
  readonly name: string;
  readonly width: Traced;
  readonly height: Traced;
}

/** A sentence: plain words and bound numbers. */
export type Words = readonly Inline[];
/** What a number is printed as: a length in inches or centimetres, cloth in yards or metres, or a plain number. */
export type Show = 'length' | 'centimetres' | 'count' | 'yards' | 'metres';
export type Inline = string | { readonly field: Traced; readonly show: Show } | { readonly strong: string };

/** A table whose head is repeated on every page it runs over. */
export interface Chart {
  readonly id: string;
  readonly title?: string;
  readonly columns: readonly ChartColumn[];
  readonly rows: readonly ChartRow[];
}

export interface ChartColumn {
  readonly title: string;
  readonly align: 'left' | 'right' | 'centre';
  /** Share of the width, relative to the other columns. */
  readonly share: number;
}

export interface ChartRow {
  readonly cells: readonly Words[];
  /** A row that names the group below it, such as a fabric: runs the full width, with the fabric's swatch. */
  readonly group?: { readonly fabric?: string };
  /** The fabric whose swatch stands before the first cell. */
  readonly swatch?: string;
}

/** A numbered step beside its figure; the two are never parted. */
export interface Step {
  readonly words: readonly Words[];
  readonly figures: readonly CaptionedFigure[];
  /** The counts for each size, its name empty in a pattern of one size, printed as a small line under the words: "Make 16 · 32 · 48". */
  readonly perSize?: {
    readonly label: string;
    readonly values: readonly { readonly size: string; readonly value: Traced }[];
  };
}

export interface CaptionedFigure {
  readonly figure: Figure;
  readonly caption?: Words;
  /** Inches of paper for one inch of cloth; absent: as large as its place allows. */
  readonly scale?: number;
}
