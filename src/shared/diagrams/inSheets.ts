import type { Box, Point } from '../drawing/turn.ts';
import type { Figure, Mark } from './figure.ts';
import { letter, line, moved } from './marks.ts';

/** What fits on one sheet of a figure that is too large for it. */
export interface FigureSheet {
  readonly figure: Figure;
  /** Counted from 0 at the top left. */
  readonly column: number;
  readonly row: number;
}

/** Figures overlap so much where they are joined, inches. */
const OVERLAP = 0.25;
/** Half a cross at a join, inches. */
const CROSS = 0.15;

/**
 * A figure on as many sheets as it needs. Where two sheets meet both show the same line with two crosses on it and a
 * numeral beside each: one sheet is cut on its line and laid on the other so that the crosses meet.
 * @param room the largest a sheet may be, inches
 * @returns one sheet, the figure itself, when it fits
 */
export function inSheets(
  figure: Figure,
  room: { readonly width: number; readonly height: number },
): readonly FigureSheet[] {
  const [across, down] = [stretches(figure.width, room.width), stretches(figure.height, room.height)];
  if (across.length === 1 && down.length === 1) return [{ figure, column: 0, row: 0 }];
  const joins = [
    ...across.slice(1).map(({ from }): Join => ({ x: from })),
    ...down.slice(1).map(({ from }): Join => ({ y: from })),
  ];
  const boxes = down.flatMap((rows, row) =>
    across.map((columns, column) => {
      const box = { x: columns.from, y: rows.from, width: columns.to - columns.from, height: rows.to - rows.from };
      return { column, row, box, own: figure.marks.flatMap((mark) => clipped(mark, box)) };
    }),
  );
  // A sheet on which nothing is to be seen is not printed.
  const printed = boxes.filter(({ own }) => own.length > 0);
  return printed.map(({ column, row, box, own }, i): FigureSheet => {
    const marks = [...own, ...joins.flatMap((join, k) => joinMarks(join, box, 2 * k + 1))];
    return {
      column,
      row,
      figure: {
        width: box.width,
        height: box.height,
        marks: marks.map((mark) => moved(mark, -box.x, -box.y)),
        alt: `${figure.alt.replace(/\.$/, '')}, sheet ${i + 1} of ${printed.length}.`,
      },
    };
  });
}

interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** Equal stretches of a length, none longer than the room; each but the last reaches a little beyond its join. */
function stretches(length: number, room: number): readonly Stretch[] {
  if (length <= room + 1e-9) return [{ from: 0, to: length }];
  const many = Math.ceil(length / (room - OVERLAP));
  const step = length / many;
  return Array.from({ length: many }, (_, i) => {
    return { from: i * step, to: Math.min(length, (i + 1) * step + OVERLAP) };
  });
}

/** Crosses have Roman numerals, so that they are not taken for the names of areas. */
function roman(number: number): string {
  const values = [
    [10, 'x'],
    [9, 'ix'],
    [5, 'v'],
    [4, 'iv'],
    [1, 'i'],
  ] as const;
  const [value, text] = values.find(([least]) => number >= least) ?? [number, ''];
  return number === 0 ? '' : text + roman(number - value);
}

/** A join runs down at x, or across at y. */
type Join = { readonly x: number } | { readonly y: number };

/** @param first the number of the first of its two crosses */
function joinMarks(join: Join, box: Box, first: number): readonly Mark[] {
  const upright = 'x' in join;
  const at = upright ? join.x : join.y;
  const [start, length] = upright ? [box.x, box.width] : [box.y, box.height];
  if (at < start - 1e-9 || at > start + length + 1e-9) return [];
  const [from, long] = upright ? [box.y, box.height] : [box.x, box.width];
  const point = (along: number, off = 0): Point => (upright ? { x: at + off, y: along } : { x: along, y: at + off });
  // At the edge of a sheet only the half of a cross that lies on it is drawn.
  const [low, high] = [Math.max(-CROSS, start - at), Math.min(CROSS, start + length - at)];
  const crosses = [0.25, 0.75].flatMap((share, i): Mark[] => {
    const along = from + long * share;
    const beside = high > 0 ? high : low;
    return [
      line(point(along, low), point(along, high), 'measure'),
      letter(roman(first + i), point(along + CROSS, beside), 'measure'),
    ];
  });
  return [line(point(from), point(from + long), 'measure'), ...crosses];
}

/** What of a mark lies in a box: lines and cloth are cut off at it; letters stay with the sheet they stand on, arrows as far as they reach. */
function clipped(mark: Mark, box: Box): readonly Mark[] {
  switch (mark.kind) {
    case 'line':
      return pathsIn(mark.points, box).map((points) => ({ ...mark, points }));
    case 'letter':
      return isIn(mark.at, box) ? [mark] : [];
    case 'arrow': {
      const [path] = pathsIn([mark.from, mark.to], box);
      const [from, to] = [path?.[0], path?.at(-1)];
      return from === undefined || to === undefined ? [] : [{ ...mark, from, to }];
    }
    case 'area': {
      const outlines = mark.outlines.map((outline) => outlineIn(outline, box)).filter((outline) => outline.length > 2);
      return outlines.length === 0 ? [] : [{ ...mark, outlines }];
    }
  }
}

/** What of an outline lies in a box (Sutherland and Hodgman, 1974): cut off at one side after another. */
function outlineIn(outline: readonly Point[], { x, y, width, height }: Box): readonly Point[] {
  const sides: readonly ((point: Point) => number)[] = [
    (point) => point.x - x,
    (point) => x + width - point.x,
    (point) => point.y - y,
    (point) => y + height - point.y,
  ];
  return sides.reduce<readonly Point[]>((rest, off) => {
    return rest.flatMap((a, i) => {
      const b = rest[(i + 1) % rest.length] as Point;
      const [p, q] = [off(a), off(b)];
      const here = p >= 0 ? [a] : [];
      if (p >= 0 === q >= 0) return here;
      const share = p / (p - q);
      return [...here, { x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y) }];
    });
  }, outline);
}

function isIn({ x, y }: Point, box: Box): boolean {
  return x >= box.x && x < box.x + box.width && y >= box.y && y < box.y + box.height;
}

/** The pieces of a path that lie in a box. */
function pathsIn(points: readonly Point[], box: Box): readonly (readonly Point[])[] {
  const paths: Point[][] = [];
  points.slice(1).forEach((b, i) => {
    const within = segmentIn(points[i] as Point, b, box);
    if (within === null) return;
    const [from, to] = within;
    const end = paths.at(-1)?.at(-1);
    if (end !== undefined && Math.hypot(end.x - from.x, end.y - from.y) < 1e-9) paths.at(-1)?.push(to);
    else paths.push([from, to]);
  });
  return paths;
}

/** What of a straight line lies in a box (Liang and Barsky, 1984); null when nothing does. */
function segmentIn(a: Point, b: Point, { x, y, width, height }: Box): readonly [Point, Point] | null {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  let [first, last] = [0, 1];
  const sides = [
    [-dx, a.x - x],
    [dx, x + width - a.x],
    [-dy, a.y - y],
    [dy, y + height - a.y],
  ] as const;
  for (const [step, room] of sides) {
    if (step === 0) {
      if (room < 0) return null;
      continue;
    }
    const share = room / step;
    if (step < 0) first = Math.max(first, share);
    else last = Math.min(last, share);
  }
  if (first >= last) return null;
  const at = (share: number): Point => ({ x: a.x + share * dx, y: a.y + share * dy });
  return [at(first), at(last)];
}
