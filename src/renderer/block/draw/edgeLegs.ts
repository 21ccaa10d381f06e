import { arcBetween, pointAt } from '../../../shared/drawing/curve.ts';
import type { Drawing } from '../../../shared/drawing/drawing.ts';
import type { Leg } from '../../../shared/drawing/meet.ts';
import { edgesOf } from '../../../shared/drawing/vertex.ts';

const known = new WeakMap<Drawing, readonly Leg[]>();

/** Every edge of a drawing once, as a stretch from place to place; asked for often, so worked out once. */
export function edgeLegs(drawing: Drawing): readonly Leg[] {
  const before = known.get(drawing);
  if (before !== undefined) return before;
  const legs = edgesOf(drawing).map(([a, b]): Leg => {
    const centre = arcBetween(drawing, a, b)?.centre;
    return { from: pointAt(drawing, a), to: pointAt(drawing, b), ...(centre === undefined ? {} : { centre }) };
  });
  known.set(drawing, legs);
  return legs;
}
