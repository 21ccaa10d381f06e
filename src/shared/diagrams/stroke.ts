import type { Ink, Letter } from './figure.ts';
import type { Manner, Tint } from './fill.ts';

/** One thing a pen draws, in points from the figure's top left corner: both pens draw this same list. */
export type Stroke = Drawn | Lettered;

export interface Drawn {
  readonly kind: 'path';
  /** SVG path data of M, L, H, V and Z only. */
  readonly path: string;
  readonly fill: Tint | null;
  readonly line: DrawnLine | null;
  readonly of?: string;
  /** The fabric that fills it in full tone and plain colour: a pen that has its picture may show that instead. */
  readonly cloth?: string;
}

export interface DrawnLine {
  readonly tint: Tint;
  readonly weight: number;
  readonly dash: readonly [number, number] | null;
  readonly round: boolean;
}

export interface Lettered {
  readonly kind: 'text';
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly align: Letter['align'];
  readonly upright: boolean;
  readonly tint: Tint;
}

export interface Settings {
  /** Points on the sheet for one inch of cloth. */
  readonly pointsPerInch: number;
  readonly inks: readonly Ink[];
  readonly manner: Manner;
}
