import { accept, type Maybe, refuse } from '../measure/finding.ts';
import { checkDrawing } from './check.ts';
import { outlinePoints } from './curve.ts';
import { type Drawing, doubleArea, type Patch } from './drawing.ts';
import type { Point } from './turn.ts';
import { tidied } from './vertex.ts';

/**
 * Merges two neighbours into one patch with the role of the first.
 * @throws RangeError when they are not neighbours along one unbroken line
 */
export function mergePatches(drawing: Drawing, first: number, second: number): Drawing {
  const result = maybeMergePatches(drawing, first, second);
  if (result.ok) return result.value;
  throw new RangeError(result.findings.map(({ what }) => what).join(' '));
}

/** The same as `mergePatches`, or why the two cannot be one. */
export function maybeMergePatches(drawing: Drawing, first: number, second: number): Maybe<Drawing> {
  const [a, b] = [drawing.patches[first], drawing.patches[second]];
  if (a === undefined || b === undefined || first === second)
    return refuse('Two different patches are needed.', 'patches');
  const outline = mergedOutline(a.outline, b.outline);
  if (outline === null) return refuse('These two do not share one unbroken edge.', 'patches', 'Choose two neighbours.');
  const patches = drawing.patches.flatMap((patch, i) =>
    i === first ? [{ ...a, outline }] : i === second ? [] : [patch],
  );
  return accept(tidied({ ...drawing, patches }));
}

/** The outline round both; null when the edges they share are none or not one chain. */
function mergedOutline(a: readonly number[], b: readonly number[]): readonly number[] | null {
  const inB = new Set(b.map((from, i) => `${b[(i + 1) % b.length]} ${from}`));
  const shared = a.map((from, i) => inB.has(`${from} ${a[(i + 1) % a.length]}`));
  const starts = shared.flatMap((is, i) => (is && !shared[(i + a.length - 1) % a.length] ? [i] : []));
  const [start, ...more] = starts;
  if (start === undefined || more.length > 0) return null;
  let end = start;
  while (shared[end % a.length]) end += 1;
  const kept = Array.from({ length: a.length - (end - start) }, (_, i) => a[(end + i) % a.length] as number);
  const from = b.indexOf(a[start] as number);
  const around = [...b.slice(from), ...b.slice(0, from)];
  const added = around.slice(0, around.indexOf(a[end % a.length] as number));
  return [...kept, ...added];
}

/** Moves a vertex, or says why the drawing would not be sound with it there. Corners of the block stay where they are. */
export function maybeMoveVertex(drawing: Drawing, vertex: number, to: Point): Maybe<Drawing> {
  const was = drawing.points[vertex];
  if (was === undefined) return refuse('There is no such vertex.', 'points');
  if (onBorder(drawing, was) && !staysOnBorder(drawing, was, to)) {
    return refuse('A vertex on the edge of the block can only be moved along that edge.', 'points');
  }
  if ((drawing.arcs ?? []).some(({ a, b }) => a === vertex || b === vertex)) {
    return refuse('The end of an arc cannot be moved; cut the arc anew.', 'points');
  }
  const points = drawing.points.map((point, i) => (i === vertex ? to : point));
  const moved = { ...drawing, points };
  const folded = moved.patches.some((patch) => {
    return patch.outline.includes(vertex) && isFolded(moved, patch);
  });
  if (folded) return refuse('Moved there, a patch would fold over itself.', 'points');
  const wrong = checkDrawing(moved, 'points');
  return wrong.length > 0 ? { ok: false, findings: wrong } : accept(moved);
}

function onBorder({ width, height }: Drawing, { x, y }: Point): boolean {
  return x === 0 || y === 0 || x === width || y === height;
}

function staysOnBorder({ width, height }: Drawing, was: Point, to: Point): boolean {
  const alongX = was.y === 0 || was.y === height;
  const alongY = was.x === 0 || was.x === width;
  if (alongX && alongY) return was.x === to.x && was.y === to.y;
  return alongX ? was.y === to.y && to.x > 0 && to.x < width : was.x === to.x && to.y > 0 && to.y < height;
}

/** Whether an outline crosses itself or has turned over. */
function isFolded(drawing: Drawing, patch: Patch): boolean {
  const outline = outlinePoints(drawing, patch);
  if (doubleArea(outline) <= 0) return true;
  return outline.some((a, i) =>
    outline.some((c, j) => {
      if (Math.abs(i - j) < 2 || Math.abs(i - j) === outline.length - 1) return false;
      return crossing(a, outline[(i + 1) % outline.length] as Point, c, outline[(j + 1) % outline.length] as Point);
    }),
  );
}

function crossing(a: Point, b: Point, c: Point, d: Point): boolean {
  const side = (p: Point, q: Point, r: Point) => Math.sign((q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x));
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}
