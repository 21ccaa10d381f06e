import { boxAbout, sharedArea } from '../../../drawing/boxes.ts';
import { outlinePoints } from '../../../drawing/curve.ts';
import { type Drawing, doubleArea, type PolygonCorner } from '../../../drawing/drawing.ts';
import { MEANT } from '../../../drawing/near.ts';
import type { Box, Point } from '../../../drawing/turn.ts';
import { edgesOf } from '../../../drawing/vertex.ts';
import { ownCorners } from '../corners.ts';
import type { Held, HeldPatch } from '../match.ts';
import { MOST_CUT } from '../recognise.ts';

/** More patches than this are no unit that the trade makes as one thing. */
const MOST_PATCHES = 36;
/** So many rectangles of one slant are enough to choose from. */
const MOST_RECTANGLES = 400;
/** Two directions nearer than this are one, radians. */
const ONE_DIRECTION = 2e-3;

/**
 * Every rectangle of at least two patches inside a drawing, whatever its slant, that could be a unit of the trade: the patches
 * as they lie once the drawing is turned so that the rectangle stands upright.
 */
export function rectanglesIn(drawing: Drawing): readonly Held[] {
  return slantsOf(drawing).flatMap((slant) => new Upright(drawing, slant).rectangles());
}

/** The directions of straight edges, a quarter turn apart being one; of nearly equal ones that of the longest edge. */
function slantsOf(drawing: Drawing): readonly number[] {
  const curved = new Set((drawing.arcs ?? []).flatMap(({ a, b }) => [`${a} ${b}`, `${b} ${a}`]));
  const quarter = Math.PI / 2;
  const edges = edgesOf(drawing).flatMap(([a, b]) => {
    if (curved.has(`${a} ${b}`)) return [];
    const [from, to] = [drawing.points[a] as Point, drawing.points[b] as Point];
    const [dx, dy] = [to.x - from.x, to.y - from.y];
    const turn = Math.atan2(dy, dx);
    return [{ slant: turn - quarter * Math.floor(turn / quarter + 1e-9), length: Math.hypot(dx, dy) }];
  });
  const slants: number[] = [];
  for (const { slant } of edges.sort((p, q) => q.length - p.length)) {
    const apart = (other: number) => Math.min(Math.abs(slant - other), quarter - Math.abs(slant - other));
    if (slants.every((other) => apart(other) > ONE_DIRECTION)) slants.push(slant);
  }
  return slants;
}

interface Lying extends HeldPatch {
  readonly outline: readonly Point[];
  readonly area: number;
}

/** The drawing turned back by a slant. */
class Upright {
  readonly #patches: readonly Lying[];
  readonly #neighbours: readonly (readonly number[])[];

  constructor(drawing: Drawing, slant: number) {
    const turned = turnedBack(slant);
    this.#patches = drawing.patches.map((patch) => {
      const corners = ownCorners(drawing, patch).map(
        ({ centre, ...corner }): PolygonCorner =>
          centre === undefined ? turned(corner) : { ...turned(corner), centre: turned(centre) },
      );
      const outline = outlinePoints(drawing, patch).map(turned);
      const box = boxAbout(outline);
      const area = doubleArea(outline) / 2;
      const straight = corners.length === 4 && corners.every(({ centre }) => centre === undefined);
      const isRectangle = straight && isFull(area, box);
      return { role: patch.role, corners, box, isRectangle, outline, area };
    });
    this.#neighbours = neighboursOf(drawing);
  }

  /** Rectangles that grow from single patches by one neighbour after another, each with all it then reaches over. */
  rectangles(): readonly Held[] {
    const met = new Set<string>();
    const found: Held[] = [];
    const open = this.#patches.map((_, index) => [index] as readonly number[]);
    for (let seed = open.pop(); seed !== undefined && found.length < MOST_RECTANGLES; seed = open.pop()) {
      const held = this.#grown(seed);
      const key = held?.patches.map(({ index }) => index).join(' ') ?? '';
      if (held === null || met.has(key)) continue;
      met.add(key);
      if (held.patches.length > 1) found.push(held);
      const own = held.patches.map(({ index }) => index);
      const beside = new Set(own.flatMap((index) => this.#neighbours[index] ?? []));
      for (const next of beside) if (!own.includes(next)) open.push([...own, next]);
    }
    return found;
  }

  /** The smallest rectangle about some patches that no patch sticks out of; null when there is none worth looking at. */
  #grown(seed: readonly number[]): Held | null {
    const inside = new Set(seed);
    let box = boxAbout(seed.flatMap((index) => (this.#patches[index] as Lying).outline));
    for (let before = 0; before !== inside.size; ) {
      before = inside.size;
      this.#patches.forEach(({ outline, box: own }, index) => {
        if (inside.has(index) || sharedArea(outline, own, box) < MEANT) return;
        inside.add(index);
        box = boxAbout(
          [box, own].flatMap(({ x, y, width, height }) => [
            { x, y },
            { x: x + width, y: y + height },
          ]),
        );
      });
      if (this.#isTooMuch(inside)) return null;
    }
    const patches = [...inside].sort((a, b) => a - b).map((index) => ({ index, patch: this.#patches[index] as Lying }));
    const area = patches.reduce((sum, { patch }) => sum + patch.area, 0);
    return isFull(area, box) ? { box, patches } : null;
  }

  #isTooMuch(inside: ReadonlySet<number>): boolean {
    if (inside.size > MOST_PATCHES) return true;
    return inside.size > MOST_CUT && [...inside].some((index) => this.#patches[index]?.isRectangle === false);
  }
}

function turnedBack(slant: number): (point: Point) => Point {
  if (slant === 0) return ({ x, y }) => ({ x, y });
  const [cos, sin] = [Math.cos(slant), Math.sin(slant)];
  return ({ x, y }) => ({ x: x * cos + y * sin, y: y * cos - x * sin });
}

function isFull(area: number, { width, height }: Box): boolean {
  return Math.abs(area - width * height) < MEANT * (width + height);
}

function neighboursOf(drawing: Drawing): readonly (readonly number[])[] {
  const owners = new Map<string, number>();
  const sides = drawing.patches.map(({ outline }) => outline.map((a, i) => [a, outline[(i + 1) % outline.length]]));
  sides.forEach((edges, index) => {
    for (const [a, b] of edges) owners.set(`${a} ${b}`, index);
  });
  return sides.map((edges) => [...new Set(edges.flatMap(([a, b]) => owners.get(`${b} ${a}`) ?? []))]);
}
