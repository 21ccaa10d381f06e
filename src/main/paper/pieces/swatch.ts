import type { Area, Figure } from '../../../shared/diagrams/figure.ts';
import type { Point } from '../../../shared/drawing/turn.ts';
import { scrapFabric } from '../../../shared/quilt/scraps.ts';
import type { Chart } from '../../../shared/writing/book.ts';
import type { Desk } from '../desk.ts';
import { drawnFigure } from '../drawnFigure.ts';
import type { Item } from '../engine/items.ts';

/** Points, three by two. */
export interface SwatchSize {
  readonly width: number;
  readonly height: number;
}

/** As high as a line of letters. */
export const SMALL: SwatchSize = { width: 15, height: 10 };
/** Large enough to know a print by. */
const LARGE: SwatchSize = { width: 33, height: 22 };
const BESIDE = 7;
/** Fabrics of a scrappy one that a swatch has room for. */
const BANDS = 4;

/** How large a chart's swatches are beside its rows; null where it has none. */
export function swatchSize(desk: Desk, { rows }: Chart): SwatchSize | null {
  const shown = rows.flatMap(({ swatch }) => swatch ?? []);
  if (shown.length === 0) return null;
  return shown.some((fabric) => desk.swatches.has(fabric)) ? LARGE : SMALL;
}

/** How far words stand from the left edge of a swatch. */
export function indentFor(size: SwatchSize): number {
  return size.width + BESIDE;
}

/** A fabric's swatch, its corner at 0, 0: its photograph, or else its colour and hatch. */
export function swatchItems(desk: Desk, fabric: string, { width, height }: SwatchSize): readonly Item[] {
  if (!desk.book.inks.some((ink) => ink.fabric === fabric)) return [];
  const bytes = desk.swatches.get(fabric);
  if (bytes === undefined) {
    const shown = shownBy(desk, fabric);
    const each = width / shown.length;
    const marks = shown.map((own, i): Area => {
      const outlines = [box(i * each, each, height)];
      return { kind: 'area', outlines, fabric: own, tone: 'full', edge: shown.length > 1 ? 'none' : 'patch' };
    });
    const edge = { kind: 'line', pen: 'patch', points: [...box(0, width, height), { x: 0, y: 0 }] } as const;
    const figure: Figure = { width, height, alt: '', marks: [...marks, ...(shown.length > 1 ? [edge] : [])] };
    // The pen draws it a point to the inch.
    return [drawnFigure(desk, figure, 1)];
  }
  const points = box(0, width, height).map(({ x, y }) => [x, y] as const);
  return [
    { kind: 'picture', x: 0, y: 0, width, height, bytes },
    { kind: 'shape', points, weight: 0.5, colour: desk.palette.quiet },
  ];
}

/** A scrappy fabric is shown by the first few of its fabrics, side by side. */
function shownBy(desk: Desk, fabric: string): readonly string[] {
  const scraps = desk.book.inks
    .map((ink) => ink.fabric)
    .filter((id) => id.startsWith(scrapFabric(fabric, 0).slice(0, -1)));
  return scraps.length === 0 || desk.plainInk ? [fabric] : scraps.slice(0, BANDS);
}

function box(x: number, width: number, height: number): readonly Point[] {
  return [
    { x, y: 0 },
    { x: x + width, y: 0 },
    { x: x + width, y: height },
    { x, y: height },
  ];
}
