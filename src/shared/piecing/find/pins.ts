import { distance, MEANT } from '../../drawing/near.ts';
import type { Point } from '../../drawing/turn.ts';
import { type Field, regionOf } from './field.ts';
import type { Along, Region } from './fieldPatch.ts';
import type { PinnedSeam } from './seams/seams.ts';

/** What the designer fixes of the sewing, in the drawing's grid units. */
export interface Pin {
  /** This seam is the last one of its part: both sides are made first. */
  readonly first?: PinnedSeam;
  /** The part between these two corners is one unit. */
  readonly unit?: PinnedSeam;
  /** And is made by this method. */
  readonly method?: string;
}

/** The pins as the search asks for them. */
export interface Pins {
  readonly seams: readonly PinnedSeam[];
  /** Whether a rectangle may be cut along a line: no pin lies across the cut. */
  allow(along: Along, line: number, region: Region): boolean;
  /** The only way to cut this rectangle, when a pinned seam crosses it from edge to edge. */
  forced(region: Region): { readonly along: Along; readonly line: number } | null;
  /** The pin that makes this rectangle one unit. */
  unit(region: Region): Pin | null;
  /** Whether any pin lies in the rectangle: then it may not be treated as others that look alike. */
  touch(region: Region): boolean;
  /** Whether a pin inside the rectangle asks for seams of its own there, so that it cannot be one unit of the trade. */
  part(region: Region): boolean;
}

/** A pinned seam along a line: between which two lines of the other direction it runs. */
interface Stretch {
  readonly along: Along;
  readonly line: number;
  readonly from: number;
  readonly to: number;
}

export function pinsOf(field: Field, pins: readonly Pin[]): Pins {
  const stretches = pins.flatMap(({ first }) => (first === undefined ? [] : (stretchOf(field, first) ?? [])));
  const units = pins.flatMap((pin) => (pin.unit === undefined ? [] : [{ pin, region: between(field, pin.unit) }]));
  const slanted = pins.flatMap(({ first }) => (first === undefined || stretchOf(field, first) !== null ? [] : [first]));
  const slants = slanted.map((seam) => between(field, seam));
  return {
    seams: pins.flatMap(({ first }) => (first === undefined ? [] : [first])),
    allow: (along, line, region) =>
      !stretches.some((stretch) => spoils(stretch, along, line, region)) &&
      !units.some((unit) => cuts(unit.region, along, line, region)) &&
      !slants.some((slant) => cuts(slant, along, line, region)),
    forced: (region) => stretches.find((stretch) => crosses(stretch, region)) ?? null,
    unit: (region) => units.find((unit) => isSame(unit.region, region))?.pin ?? null,
    touch: (region) =>
      stretches.some((stretch) => overlaps(boundsOf(stretch), region)) ||
      [...units.map((unit) => unit.region), ...slants].some((other) => overlaps(other, region)),
    part: (region) =>
      stretches.some((stretch) => isWithin(boundsOf(stretch), region) && !onEdge(stretch, region)) ||
      units.some((unit) => isWithin(unit.region, region) && !isSame(unit.region, region)),
  };
}

function between(field: Field, [a, b]: PinnedSeam): Region {
  const [x, y] = [Math.min(a.x, b.x), Math.min(a.y, b.y)];
  return regionOf(field, { x, y, width: Math.abs(a.x - b.x), height: Math.abs(a.y - b.y) });
}

function stretchOf(field: Field, seam: PinnedSeam): Stretch | null {
  const { left, top, right, bottom } = between(field, seam);
  if (left === right && top < bottom) return { along: 'across', line: left, from: top, to: bottom };
  return top === bottom && left < right ? { along: 'down', line: top, from: left, to: right } : null;
}

function boundsOf({ along, line, from, to }: Stretch): Region {
  return along === 'across'
    ? { left: line, right: line, top: from, bottom: to }
    : { left: from, right: to, top: line, bottom: line };
}

function spanOf({ left, top, right, bottom }: Region, along: Along): readonly [number, number] {
  return along === 'across' ? [top, bottom] : [left, right];
}

/** A cut through a pinned seam, or along the same line and longer than it, would make it no seam of its own. */
function spoils(stretch: Stretch, along: Along, line: number, region: Region): boolean {
  const [from, to] = spanOf(region, along);
  if (stretch.along === along)
    return (
      stretch.line === line && from <= stretch.from && to >= stretch.to && (from < stretch.from || to > stretch.to)
    );
  return line > stretch.from && line < stretch.to && stretch.line > from && stretch.line < to;
}

/** Whether a cut runs through a pinned unit. */
function cuts({ left, top, right, bottom }: Region, along: Along, line: number, region: Region): boolean {
  const [from, to] = spanOf(region, along);
  if (along === 'across') return line > left && line < right && from < bottom && to > top;
  return line > top && line < bottom && from < right && to > left;
}

function crosses({ along, line, from, to }: Stretch, region: Region): boolean {
  const [start, end] = spanOf(region, along);
  const [first, last] = along === 'across' ? [region.left, region.right] : [region.top, region.bottom];
  return from === start && to === end && line > first && line < last;
}

function isSame(a: Region, b: Region): boolean {
  return a.left === b.left && a.top === b.top && a.right === b.right && a.bottom === b.bottom;
}

function isWithin(a: Region, b: Region): boolean {
  return a.left >= b.left && a.top >= b.top && a.right <= b.right && a.bottom <= b.bottom;
}

function overlaps(a: Region, b: Region): boolean {
  return a.left <= b.right && a.right >= b.left && a.top <= b.bottom && a.bottom >= b.top;
}

function onEdge({ along, line }: Stretch, { left, top, right, bottom }: Region): boolean {
  return along === 'across' ? line === left || line === right : line === top || line === bottom;
}

/** Whether a seam of the plan is the pinned one. */
export function isPinned([a, b]: PinnedSeam, start: Point, end: Point): boolean {
  const near = (p: Point, q: Point) => distance(p, q) < 2 * MEANT;
  return (near(a, start) && near(b, end)) || (near(a, end) && near(b, start));
}
