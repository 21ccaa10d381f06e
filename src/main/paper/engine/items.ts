import type { Figure, Ink } from '../../../shared/diagrams/figure.ts';
import type { Manner } from '../../../shared/diagrams/fill.ts';
import type { FaceInDocument } from './library.ts';

/**
 * What is drawn, as plain data in points: x from the frame's left edge (below 0 hangs in the margin), y downwards from
 * the top of the piece it belongs to.
 */
export type Item = TextItem | FillItem | RuleItem | ShapeItem | FigureItem | PictureItem;

/** A run of text on one line; y is the top of its line, `leading` the height of that line. */
export interface TextItem {
  readonly kind: 'text';
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly leading: number;
  readonly text: string;
  readonly face: FaceInDocument;
  readonly size: number;
  readonly tracking: number;
  readonly colour: string;
}

export interface FillItem {
  readonly kind: 'fill';
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly colour: string;
}

export interface RuleItem {
  readonly kind: 'rule';
  readonly x: number;
  readonly y: number;
  readonly toX: number;
  readonly toY: number;
  readonly weight: number;
  readonly colour: string;
  /** A running stitch: length of a stitch and of the gap. */
  readonly stitch?: readonly [number, number];
}

/** A closed outline. */
export interface ShapeItem {
  readonly kind: 'shape';
  readonly points: readonly (readonly [number, number])[];
  readonly weight: number;
  readonly colour: string;
}

/** A figure, its own corner at x, y; `scale` is points for an inch of cloth. */
export interface FigureItem {
  readonly kind: 'figure';
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly figure: Figure;
  readonly scale: number;
  readonly inks: readonly Ink[];
  readonly manner: Manner;
}

/** A photograph, fitted into its box. */
export interface PictureItem {
  readonly kind: 'picture';
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /** JPEG. */
  readonly bytes: Uint8Array;
}

/** The item moved. */
export function moved<T extends Item>(item: T, dx: number, dy: number): T {
  if (item.kind === 'rule') return { ...item, x: item.x + dx, y: item.y + dy, toX: item.toX + dx, toY: item.toY + dy };
  if (item.kind === 'shape') return { ...item, points: item.points.map(([x, y]) => [x + dx, y + dy] as const) };
  return { ...item, x: item.x + dx, y: item.y + dy };
}

/** The highest and lowest point of an item. */
export function extent(item: Item): { readonly top: number; readonly bottom: number } {
  if (item.kind === 'text') return { top: item.y, bottom: item.y + item.leading };
  if (item.kind === 'rule') return { top: Math.min(item.y, item.toY), bottom: Math.max(item.y, item.toY) };
  if (item.kind === 'shape') {
    const ys = item.points.map(([, y]) => y);
    return { top: Math.min(...ys), bottom: Math.max(...ys) };
  }
  return { top: item.y, bottom: item.y + item.height };
}
