import { arcBetween, pointAt } from '../../../shared/drawing/curve.ts';
import type { Drawing } from '../../../shared/drawing/drawing.ts';
import { type Leg, sweepOf } from '../../../shared/drawing/meet.ts';
import type { Point } from '../../../shared/drawing/turn.ts';

/** A number as a path has it. */
function short(value: number): string {
  return String(Number(value.toFixed(4)) + 0);
}

function at({ x, y }: Point): string {
  return `${short(x)} ${short(y)}`;
}

/** On from the leg's start to its end, as a path goes on. */
function onTo({ from, to, centre }: Leg): string {
  if (centre === undefined) return `L${at(to)}`;
  const radius = short(Math.hypot(from.x - centre.x, from.y - centre.y));
  return `A${radius} ${radius} 0 0 ${sweepOf(from, to, centre) > 0 ? 1 : 0} ${at(to)}`;
}

/** A leg as a path of its own. */
export function legPath(leg: Leg): string {
  return `M${at(leg.from)}${onTo(leg)}`;
}

/** Places joined by straight lines. */
export function linePath(places: readonly Point[]): string {
  return places.map((place, i) => `${i === 0 ? 'M' : 'L'}${at(place)}`).join('');
}

/** The outline of a patch, arcs as arcs. */
export function patchPath(drawing: Drawing, patch: number): string {
  const { outline } = drawing.patches[patch] as Drawing['patches'][number];
  const legs = outline.map((a, i): Leg => {
    const b = outline[(i + 1) % outline.length] as number;
    const arc = drawing.arcs === undefined ? null : arcBetween(drawing, a, b);
    return { from: pointAt(drawing, a), to: pointAt(drawing, b), ...(arc === null ? {} : { centre: arc.centre }) };
  });
  return `${legs.map((leg, i) => (i === 0 ? legPath(leg) : onTo(leg))).join('')}Z`;
}
