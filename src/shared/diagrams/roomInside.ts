import type { Point } from '../drawing/turn.ts';
import { boxAround } from './marks.ts';

/** A place inside an outline, and how far cloth reaches from it four ways. */
export interface Room {
  readonly middle: Point;
  readonly up: number;
  readonly down: number;
  readonly left: number;
  readonly right: number;
}

/** Places looked at across and down. */
const MESH = 24;

/** The place inside an outline with the most room about it, of a mesh laid over it. */
export function roomInside(outline: readonly Point[]): Room {
  const { x, y, width, height } = boxAround(outline);
  const spots = Array.from({ length: (MESH - 1) ** 2 }, (_, i): Point => {
    const [column, row] = [(i % (MESH - 1)) + 1, Math.floor(i / (MESH - 1)) + 1];
    return { x: x + (width * column) / MESH, y: y + (height * row) / MESH };
  });
  const rooms = spots.flatMap((spot) => roomAt(outline, spot) ?? []);
  const least = ({ up, down, left, right }: Room) => Math.min(up, down, left, right);
  const [first, ...rest] = rooms;
  if (first === undefined)
    return { middle: { x: x + width / 2, y: y + height / 2 }, up: 0, down: 0, left: 0, right: 0 };
  return rest.reduce((best, room) => (least(room) > least(best) + 1e-9 ? room : best), first);
}

/** How far it is to the outline four ways; null outside. */
function roomAt(outline: readonly Point[], middle: Point): Room | null {
  const across = crossings(outline, middle.y).map((at) => at - middle.x);
  const swapped = outline.map(({ x, y }) => ({ x: y, y: x }));
  const down = crossings(swapped, middle.x).map((at) => at - middle.y);
  const ahead = (places: readonly number[]) => Math.min(...places.filter((place) => place > 0));
  const behind = (places: readonly number[]) =>
    Math.min(...places.filter((place) => place <= 0).map((place) => -place));
  if (across.filter((place) => place > 0).length % 2 === 0) return null;
  return { middle, left: behind(across), right: ahead(across), up: behind(down), down: ahead(down) };
}

/** Where a level line crosses an outline. */
function crossings(outline: readonly Point[], y: number): readonly number[] {
  return outline.flatMap((a, i) => {
    const b = outline[(i + 1) % outline.length] as Point;
    return a.y > y === b.y > y ? [] : [a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)];
  });
}
