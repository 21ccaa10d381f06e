import { arcBetween, pointAt } from '../../drawing/curve.ts';
import { distance } from '../../drawing/near.ts';
import type { Point } from '../../drawing/turn.ts';
import type { Inches } from '../../measure/inches.ts';
import { between, clothOf, roleOf, sideOf, type Work } from '../allowance/work.ts';
import { cornersOf, type ShapedPatch, type ShapeOf } from './shapes.ts';
import type { Notch, Template, TemplatePieces } from './template.ts';

/** Straight pieces a quarter of a circle is drawn with at its true size. */
const FINE = 64;

/**
 * The template of one shape at the scale of the work, lying as the first of its patches lies that has an edge on the unit's
 * own: there the straight grain matters most.
 */
export function templateOf(work: Work, { shape, patches }: ShapeOf): Template {
  const shown = patches.find(({ patch, reversed }) => !reversed && onRim(work, patch)) ?? (patches[0] as ShapedPatch);
  const { patch } = shown;
  const { outline } = work.drawing.patches[patch] as (typeof work.drawing.patches)[number];
  const finished = outline.flatMap((a, i) => {
    const b = outline[(i + 1) % outline.length] as number;
    return [pointAt(work.drawing, a), ...between(work.drawing, a, b, FINE)];
  });
  return {
    shape,
    finished,
    cut: clothOf({ ...work, points: () => 'blunted' }, patch, new Set([patch]), FINE),
    notches: notchesOf(work, patch),
    pieces: piecesOf(work, patches),
  };
}

function onRim({ drawing }: Work, patch: number): boolean {
  const { outline } = drawing.patches[patch] as (typeof drawing.patches)[number];
  return outline.some((a, i) => sideOf(drawing, a, outline[(i + 1) % outline.length] as number) !== null);
}

function piecesOf(work: Work, patches: readonly ShapedPatch[]): readonly TemplatePieces[] {
  const roles = [...new Set(patches.map(({ patch }) => roleOf(work, patch)))];
  return roles.map((role) => {
    const its = patches.filter(({ patch }) => roleOf(work, patch) === role);
    const reversed = its.filter((one) => one.reversed).length;
    return { role, count: its.length - reversed, reversed };
  });
}

/** How much of the seam allowance a notch is long. */
const NOTCH = 0.6;

/** Where another seam runs into a straight side, and in the middle of every arc. */
function notchesOf(work: Work, patch: number): readonly Notch[] {
  const { drawing, seam } = work;
  const { outline } = drawing.patches[patch] as (typeof drawing.patches)[number];
  const corners = new Set(cornersOf(drawing, { outline, role: '' }));
  return outline.flatMap((a, i) => {
    const b = outline[(i + 1) % outline.length] as number;
    if (work.owner(b, a) === undefined) return [];
    const [from, to] = [pointAt(drawing, a), pointAt(drawing, b)];
    const arc = arcBetween(drawing, a, b);
    if (arc !== null) return [arcNotch(from, to, arc.centre, seam)];
    return corners.has(i) ? [] : [notchAt(from, pointAt(drawing, outline.at(i - 1) as number), to, seam)];
  });
}

/** In the middle of an arc that is walked from one point to the other. */
function arcNotch(from: Point, to: Point, centre: Point, seam: Inches): Notch {
  const radius = distance(from, centre);
  const [dx, dy] = [(from.x + to.x) / 2 - centre.x, (from.y + to.y) / 2 - centre.y];
  // The chord of half a circle runs through its centre: then the middle lies square to the chord.
  const [x, y] = Math.hypot(dx, dy) > 1e-9 ? [dx, dy] : [to.y - from.y, from.x - to.x];
  const at = { x: centre.x + (x * radius) / Math.hypot(x, y), y: centre.y + (y * radius) / Math.hypot(x, y) };
  const along = { x: to.x - from.x, y: to.y - from.y };
  return notchAt(at, at, { x: at.x + along.x, y: at.y + along.y }, seam);
}

/** From the cutting line inwards, square to the seam that runs from one point to another. */
function notchAt(at: Point, before: Point, after: Point, seam: Inches): Notch {
  const length = Math.hypot(after.x - before.x, after.y - before.y);
  const out = { x: (after.y - before.y) / length, y: -(after.x - before.x) / length };
  const away = (by: Inches): Point => ({ x: at.x + out.x * by, y: at.y + out.y * by });
  return { from: away(seam), to: away(seam * (1 - NOTCH)) };
}
