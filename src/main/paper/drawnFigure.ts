import type { Figure } from '../../shared/diagrams/figure.ts';
import type { Desk } from './desk.ts';
import type { FigureItem } from './engine/items.ts';

/**
 * A figure at so many points for an inch of cloth, its corner at 0, 0. Cloth is hatched too where figures must read
 * without colour; a cover is flat.
 */
export function drawnFigure(desk: Desk, figure: Figure, scale: number, flat = false): FigureItem {
  return {
    kind: 'figure',
    x: 0,
    y: 0,
    width: figure.width * scale,
    height: figure.height * scale,
    figure,
    scale,
    inks: desk.book.inks,
    manner: desk.plainInk ? 'plain' : flat ? 'colour' : 'hatched',
  };
}
