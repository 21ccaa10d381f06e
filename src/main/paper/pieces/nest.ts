import { boxAbout } from '../../../shared/drawing/boxes.ts';
import type { Point } from '../../../shared/drawing/turn.ts';

/** One way a thing can lie: what must not be covered by others, from its own top left corner, points. */
export interface Way {
  readonly width: number;
  readonly height: number;
  readonly solids: readonly (readonly Point[])[];
}

/** Where a thing is put, and which of its ways it lies. */
export interface Spot {
  readonly thing: number;
  readonly way: number;
  readonly page: number;
  readonly x: number;
  readonly y: number;
}

/** What things are put on. */
export interface Table {
  readonly width: number;
  /** The height of a page by its number. */
  readonly height: (page: number) => number;
  /** Space between things, points. */
  readonly gap: number;
}

/** Things are moved by so many points until they lie free. */
const STEP = 4;

/**
 * Lays things out on as few pages as will do, the largest first, each on the first page that has room and as high up on it as it
 * can lie; a triangle goes head to tail beside another where that is higher.
 * @returns a spot for every thing, in order; one that is larger than a page has a page of its own
 */
export function nest(things: readonly (readonly Way[])[], table: Table): readonly Spot[] {
  const area = (ways: readonly Way[]) => Math.max(...ways.map(({ width, height }) => width * height));
  const order = things.map((ways, thing) => ({ ways, thing })).sort((a, b) => area(b.ways) - area(a.ways));
  const pages: Mask[] = [];
  const spots = order.map(({ ways, thing }): Spot => {
    for (let page = 0; ; page += 1) {
      const mask = pages[page] ?? new Mask(table.width, table.height(page), table.gap);
      const found = mask.find(ways);
      const alone = page > 0 && pages[page] === undefined;
      if (found === null && !alone) {
        pages[page] = mask;
        continue;
      }
      pages[page] = mask;
      const { way, x, y } = found ?? { way: 0, x: 0, y: 0 };
      mask.put(ways[way] as Way, x, y);
      return { thing, way, page, x, y };
    }
  });
  return spots.sort((a, b) => a.thing - b.thing);
}

interface Row {
  readonly from: number;
  readonly to: number;
}

/** A page in cells of one step: which of them are covered. */
class Mask {
  readonly #columns: number;
  readonly #rows: number;
  readonly #gap: number;
  /** For every row, how many cells up to each column are covered. */
  readonly #covered: Int32Array[];

  constructor(width: number, height: number, gap: number) {
    this.#columns = Math.floor(width / STEP);
    this.#rows = Math.floor(height / STEP);
    this.#gap = gap;
    this.#covered = Array.from({ length: Math.max(0, this.#rows) }, () => new Int32Array(this.#columns + 1));
  }

  /** The way and the place that end highest on the page; of equal ones the one furthest to the left. */
  find(ways: readonly Way[]): { readonly way: number; readonly x: number; readonly y: number } | null {
    let best: { way: number; x: number; y: number; bottom: number } | null = null;
    ways.forEach((way, index) => {
      const place = this.#placeFor(way);
      if (place === null) return;
      const bottom = place.y + way.height;
      if (best === null || bottom < best.bottom - STEP) best = { way: index, ...place, bottom };
    });
    return best;
  }

  put(way: Way, x: number, y: number): void {
    for (const [row, span] of this.#spans(way, x, y)) {
      const covered = this.#covered[row];
      if (covered === undefined) continue;
      let more = 0;
      for (let column = 0; column < this.#columns; column += 1) {
        const known = (covered[column + 1] as number) + more - (covered[column] as number);
        const isNew = known <= 0 && column >= span.from && column < span.to;
        if (isNew) more += 1;
        covered[column + 1] = (covered[column + 1] as number) + more;
      }
    }
  }

  #placeFor(way: Way): Point | null {
    const spans = this.#spans(way, 0, 0);
    const [lastRow, lastColumn] = [
      this.#rows - Math.ceil(way.height / STEP),
      this.#columns - Math.ceil(way.width / STEP),
    ];
    for (let row = 0; row <= lastRow; row += 1)
      for (let column = 0; column <= lastColumn; column += 1)
        if (spans.every(([at, { from, to }]) => this.#isFree(row + at, column + from, column + to)))
          return { x: column * STEP, y: row * STEP };
    return null;
  }

  #isFree(row: number, from: number, to: number): boolean {
    const covered = this.#covered[row];
    if (covered === undefined) return true;
    const [start, end] = [Math.max(0, from), Math.min(this.#columns, to)];
    return end <= start || (covered[end] as number) === (covered[start] as number);
  }

  /** The cells a thing covers, row by row, half the gap about it with it. */
  #spans({ solids }: Way, x: number, y: number): readonly (readonly [number, Row])[] {
    const half = this.#gap / 2;
    return solids.flatMap((solid) => {
      const outline = solid.map((point) => ({ x: point.x + x, y: point.y + y }));
      const { y: top, height } = boxAbout(outline);
      const [first, last] = [Math.floor((top - half) / STEP), Math.ceil((top + height + half) / STEP)];
      return Array.from({ length: last - first }, (_, i) => {
        const row = first + i;
        const reach = reachBetween(outline, row * STEP - half, (row + 1) * STEP + half);
        return reach === null
          ? []
          : [[row, { from: Math.floor((reach.from - half) / STEP), to: Math.ceil((reach.to + half) / STEP) }] as const];
      }).flat();
    });
  }
}

/** How far an outline reaches between two heights; null when it is not there at all. */
function reachBetween(outline: readonly Point[], top: number, bottom: number): Row | null {
  const places = outline.flatMap((a, i) => {
    const b = outline[(i + 1) % outline.length] as Point;
    const own = a.y >= top && a.y <= bottom ? [a.x] : [];
    const crossed = [top, bottom].flatMap((level) =>
      a.y > level === b.y > level ? [] : [a.x + ((level - a.y) / (b.y - a.y)) * (b.x - a.x)],
    );
    return [...own, ...crossed];
  });
  return places.length === 0 ? null : { from: Math.min(...places), to: Math.max(...places) };
}
