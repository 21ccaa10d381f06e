import type { Point } from '../../drawing/turn.ts';
import type { Inches } from '../../measure/inches.ts';
import { given, named, type Traced, type TracedSize, times } from '../../measure/traced.ts';
import type { Scale } from '../method.ts';
import { cutUp, roomyLength, seamOf } from './sums.ts';

interface Size {
  readonly width: Inches;
  readonly height: Inches;
}

/**
 * The rectangle whose halves make a half-rectangle triangle. A right triangle with a seam all round is the finished one made
 * larger about the middle of its inscribed circle, of radius (a + b − c) ÷ 2, by a seam: its side a grows by
 * 2a ÷ (a + b − c) seams (computed). Up to the ruler the two sides no longer have quite the finished slope, so the
 * trimmed unit lies in them a little turned; where it would reach over the edge, a side takes another mark of the ruler.
 * @param unfinished what the unit is trimmed to
 */
export function halfRectangleSize(
  { width, height }: { readonly width: number; readonly height: number },
  unfinished: Size,
  scale: Scale,
): TracedSize {
  const [a, b] = [roomyLength(width, scale), roomyLength(height, scale)];
  const share = 2 / (a.value + b.value - Math.hypot(a.value, b.value));
  const side = (finished: Traced, marks: number) => {
    const seams = named(times(bare(share * finished.value), seamOf(scale)), 'for its seams');
    const more = marks === 0 ? [] : [given(marks * scale.step, 'for the slope')];
    return cutUp(scale, finished, seams, ...more);
  };
  const sizes = MARKS.map(([across, down]) => ({ width: side(a, across), height: side(b, down) }));
  const enough = sizes.find((size) => laidHalf(valuesOf(size), unfinished, scale.seam).spare > -1e-6);
  return enough ?? (sizes.at(-1) as TracedSize);
}

function bare(value: number): Traced {
  return { value, unit: 'count', how: { kind: 'given' } };
}

function valuesOf({ width, height }: TracedSize): Size {
  return { width: width.value, height: height.value };
}

/** More marks of the ruler, across and down, the fewest first. */
const MARKS: readonly (readonly [number, number])[] = [0, 1, 2, 3, 4, 5, 6].flatMap((all) =>
  Array.from({ length: all + 1 }, (_, down) => [all - down, down] as const),
);

/** The upper left half of a cut rectangle as it lies in the trimmed unit. */
export interface LaidHalf {
  /** The square corner, then clockwise; the middle of the trimmed unit is at 0, 0. */
  readonly corners: readonly [Point, Point, Point];
  /** The direction of the seam, from the lower left to the upper right. */
  readonly along: Point;
  /** How much cloth is left beyond the trimming lines where there is least; below 0 it is not enough. */
  readonly spare: Inches;
}

/**
 * Lays the upper left half of a rectangle, cut from its lower left to its upper right corner, so that its seam runs a seam
 * in from both edges at two corners of the trimmed unit, and its two outer edges are spare alike.
 */
export function laidHalf({ width: a, height: b }: Size, trimmed: Size, seam: Inches): LaidHalf {
  const along = unit({ x: trimmed.width - 2 * seam, y: -(trimmed.height - 2 * seam) });
  const turn = Math.atan2(along.y, along.x) - Math.atan2(-b, a);
  const turned = ({ x, y }: Point): Point => ({
    x: x * Math.cos(turn) - y * Math.sin(turn),
    y: x * Math.sin(turn) + y * Math.cos(turn),
  });
  // The long side lies a seam beyond the seam line; where along it is found below.
  const beyond = { x: -along.y * seam, y: along.x * seam };
  const from = turned({ x: -a / 2, y: -b / 2 });
  const start = { x: from.x + beyond.x, y: from.y + beyond.y };
  const [top, left] = [turned({ x: 0, y: -1 }), turned({ x: -1, y: 0 })];
  const spots = shownSpots(trimmed, along);
  const spare = (out: Point) => Math.min(...spots.map((spot) => dot(start, out) - dot(spot, out)));
  const [overTop, overLeft] = [spare(top), spare(left)];
  const by = (overLeft - overTop) / (dot(along, top) - dot(along, left));
  const place = (point: Point): Point => {
    const { x, y } = turned(point);
    return { x: start.x + x + by * along.x, y: start.y + y + by * along.y };
  };
  const corners = [place({ x: 0, y: 0 }), place({ x: a, y: 0 }), place({ x: 0, y: b })] as const;
  return { corners, along, spare: overTop + by * dot(along, top) };
}

/** The corners of what is seen of the upper left half in the trimmed unit. */
function shownSpots({ width, height }: Size, along: Point): readonly Point[] {
  const [x, y] = [width / 2, height / 2];
  const corners = [
    { x: -x, y: -y },
    { x, y: -y },
    { x: -x, y },
  ].filter((spot) => dot(spot, { x: -along.y, y: along.x }) < 1e-9);
  const share = Math.min(x / Math.abs(along.x), y / Math.abs(along.y));
  const end = { x: along.x * share, y: along.y * share };
  return [...corners, end, { x: -end.x, y: -end.y }];
}

function dot(a: Point, b: Point): number {
  return a.x * b.x + a.y * b.y;
}

function unit({ x, y }: Point): Point {
  const length = Math.hypot(x, y);
  return { x: x / length, y: y / length };
}
