import { arcBetween, pointAt } from './curve.ts';
import type { Drawing, Patch, Polygon, PolygonCorner } from './drawing.ts';

/** A patch by itself: every vertex of its outline as a corner, arcs by the centre at the corner they lead to. */
export function patchPolygon(drawing: Drawing, { outline, role }: Patch): Polygon {
  const corners = outline.map((vertex, i): PolygonCorner => {
    const before = outline[(i + outline.length - 1) % outline.length] as number;
    const arc = arcBetween(drawing, before, vertex);
    const { x, y } = pointAt(drawing, vertex);
    return arc === null ? { x, y } : { x, y, centre: arc.centre };
  });
  return { role, corners };
}

/** Every patch by itself, in order. */
export function drawingPolygons(drawing: Drawing): readonly Polygon[] {
  return drawing.patches.map((patch) => patchPolygon(drawing, patch));
}
