import type { Point } from '../drawing/turn.ts';

/**
 * A figure as plain data, made once and drawn by two pens: svg.js on screen, compact SVG on paper. Coordinates are
 * inches of cloth; the pen is told the scale. Line widths and letter sizes are not here: each `pen` name has its own in
 * the pens, in points, whatever the scale.
 */
export interface Figure {
  readonly width: number;
  readonly height: number;
  readonly marks: readonly Mark[];
  /** Said to those who cannot see it, one sentence. */
  readonly alt: string;
}

export type Mark = Area | Line | Arrow | Letter;

/** Filled cloth. Many outlines of one fabric are one mark: quick to draw and small on paper. */
export interface Area {
  readonly kind: 'area';
  readonly outlines: readonly (readonly Point[])[];
  /** Fabric id; the pen knows its colour and its hatch. Null is bare paper. */
  readonly fabric: string | null;
  /** 'full': the part just sewn. 'pale': what was there before. 'wrong': the wrong side of the cloth. */
  readonly tone: 'full' | 'pale' | 'wrong';
  readonly edge: 'patch' | 'unit' | 'none';
  /** What a click on it means, such as `block 2 3` or `unit hst`; only the screen uses it. */
  readonly of?: string;
}

export type LinePen = 'patch' | 'unit' | 'cut' | 'sew' | 'marked' | 'measure' | 'misfit';

export interface Line {
  readonly kind: 'line';
  readonly points: readonly Point[];
  readonly pen: LinePen;
}

export interface Arrow {
  readonly kind: 'arrow';
  readonly from: Point;
  readonly to: Point;
  /** 'press': the way a seam is pressed. 'turn': which way the block's top points. 'next': from one stage to the next. */
  readonly means: 'press' | 'turn' | 'next';
}

export interface Letter {
  readonly kind: 'letter';
  readonly text: string;
  readonly at: Point;
  /** 'letter': names a piece or block. 'measure': says a length. 'number': a step or place. */
  readonly style: 'letter' | 'measure' | 'number';
  readonly align: 'start' | 'middle' | 'end';
  /** Reads upwards, along an upright line, when true. */
  readonly upright?: boolean;
}

/** What a pen needs to know to fill a fabric. */
export interface Ink {
  readonly fabric: string;
  readonly colour: string;
  readonly hatch: Hatch;
}

/** A hatch that reads without colour. Lines are computed as segments by the pen; `gap` is in points. */
export interface Hatch {
  readonly kind: 'none' | 'lines' | 'crossed' | 'dots' | 'solid';
  readonly degrees: number;
  readonly gap: number;
}
