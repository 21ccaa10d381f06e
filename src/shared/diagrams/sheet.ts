import { type Hex, mixed } from './colour.ts';
import type { Figure } from './figure.ts';
import type { Tint } from './fill.ts';
import type { Paint } from './weights.ts';

/** Bare sheet on every side of a figure, points, so that the outermost lines are whole. */
export const MARGIN = 1;

/** How large a figure comes out, in points, margin and all. */
export function sheetSize(figure: Figure, pointsPerInch: number): { readonly width: number; readonly height: number } {
  return { width: figure.width * pointsPerInch + 2 * MARGIN, height: figure.height * pointsPerInch + 2 * MARGIN };
}

/** What a printer's named paints are. Without colour they are pure black and greys, so that thin lines stay whole. */
export const PRINTED: Readonly<Record<'colour' | 'plain', Readonly<Record<Paint, Hex>>>> = {
  colour: {
    ink: '#1e2330',
    walnut: '#5a4a3c',
    madder: '#9e3b3f',
    sheet: '#ffffff',
    edge: '#1e2330',
    thread: '#1e2330',
    bare: '#ffffff',
  },
  plain: {
    ink: '#000000',
    walnut: '#444444',
    madder: '#000000',
    sheet: '#ffffff',
    edge: '#000000',
    thread: '#000000',
    bare: '#ffffff',
  },
};

/** A tint as one flat printed colour. */
export function printed({ of, wash }: Tint, paints: Readonly<Record<Paint, Hex>>): Hex {
  const colour = of in paints ? paints[of as Paint] : of;
  return mixed(colour, paints.bare, wash);
}
