import { outlinePoints, pointAt } from '../../../shared/drawing/curve.ts';
import type { Drawing } from '../../../shared/drawing/drawing.ts';
import { type EdgeOf, type Stretch, seamAt, straightRun } from '../../../shared/drawing/run.ts';
import { patchAt } from '../../../shared/drawing/split.ts';
import type { Box, Point } from '../../../shared/drawing/turn.ts';
import type { SeamPicked, Selection } from '../../state/selection.ts';

/** What a click picks: the seam near it, else the patch under it, else the block. */
export function pickedAt(
  drawing: Drawing,
  block: string,
  at: Point,
  reach: number,
  more: boolean,
  before: Selection,
): Selection {
  const edge = more ? null : seamAt(drawing, at, reach);
  const seam = edge === null ? null : seamPicked(drawing, block, edge);
  if (seam !== null) return seam;
  const patch = patchAt(drawing, at);
  if (patch === null) return { kind: 'block', block };
  return more ? toggled(before, block, patch) : { kind: 'patches', block, patches: [patch] };
}

function seamPicked(drawing: Drawing, block: string, edge: EdgeOf): SeamPicked | null {
  const whole = straightRun(drawing, edge);
  const near = [pointAt(drawing, edge[0]), pointAt(drawing, edge[1])] as const;
  return whole === null ? null : { kind: 'seam', block, seam: whole, whole, near };
}

/** One patch more, or one fewer. */
export function toggled(before: Selection, block: string, patch: number): Selection {
  const picked = before.kind === 'patches' && before.block === block ? before.patches : [];
  const next = picked.includes(patch) ? picked.filter((one) => one !== patch) : [...picked, patch];
  return next.length === 0 ? { kind: 'block', block } : { kind: 'patches', block, patches: next };
}

/** The patches that lie whole in a box drawn about them. */
export function patchesWithin(drawing: Drawing, box: Box): readonly number[] {
  const inside = ({ x, y }: Point) => x >= box.x && y >= box.y && x <= box.x + box.width && y <= box.y + box.height;
  return drawing.patches.flatMap((patch, i) => (outlinePoints(drawing, patch, 4).every(inside) ? [i] : []));
}

/** The inner seams round a patch, each as the straight line it is part of; each line once. */
export function seamsRound(drawing: Drawing, block: string, patch: number): readonly SeamPicked[] {
  const outline = drawing.patches[patch]?.outline ?? [];
  const found: SeamPicked[] = [];
  outline.forEach((a, i) => {
    const edge: EdgeOf = [a, outline[(i + 1) % outline.length] as number];
    const [from, to] = [pointAt(drawing, edge[0]), pointAt(drawing, edge[1])];
    const isSeam = seamAt(drawing, { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 }, 1e-6) !== null;
    const seam = isSeam ? seamPicked(drawing, block, edge) : null;
    if (seam !== null && !found.some((one) => isSameStretch(one.whole, seam.whole))) found.push(seam);
  });
  return found;
}

/** Whether two stretches have the same ends, whichever is named first. */
export function isSameStretch([a, b]: Stretch, [c, d]: Stretch): boolean {
  const same = (p: Point, q: Point) => Math.hypot(p.x - q.x, p.y - q.y) < 1e-6;
  return (same(a, c) && same(b, d)) || (same(a, d) && same(b, c));
}

/** The box about some patches. */
export function boxAbout(drawing: Drawing, patches: readonly number[]): Box {
  const all = patches.flatMap((patch) => {
    const wanted = drawing.patches[patch];
    return wanted === undefined ? [] : outlinePoints(drawing, wanted);
  });
  const [xs, ys] = [all.map(({ x }) => x), all.map(({ y }) => y)];
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}

/** The box of two opposite corners. */
export function boxOf(a: Point, b: Point): Box {
  return { x: Math.min(a.x, b.x), y: Math.min(a.y, b.y), width: Math.abs(a.x - b.x), height: Math.abs(a.y - b.y) };
}
