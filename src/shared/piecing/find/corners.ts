import { arcBetween, pointAt } from '../../drawing/curve.ts';
import type { Drawing, Patch, PolygonCorner } from '../../drawing/drawing.ts';
import { beside, distance, MEANT } from '../../drawing/near.ts';

/**
 * A patch's own corners: vertices in the middle of a straight edge, or of an arc about one centre, are left out. They are
 * there for its neighbours' sake and do not change its shape.
 */
export function ownCorners(drawing: Drawing, { outline }: Patch): readonly PolygonCorner[] {
  return outline.flatMap((vertex, i): PolygonCorner[] => {
    const before = outline[(i + outline.length - 1) % outline.length] as number;
    const after = outline[(i + 1) % outline.length] as number;
    const here = pointAt(drawing, vertex);
    const [from, to] = [arcBetween(drawing, before, vertex), arcBetween(drawing, vertex, after)];
    if (from === null && to === null) {
      const { along, off } = beside(here, pointAt(drawing, before), pointAt(drawing, after));
      return off < MEANT && along > 0 && along < 1 ? [] : [here];
    }
    if (from !== null && to !== null && distance(from.centre, to.centre) < MEANT) return [];
    return [from === null ? here : { ...here, centre: from.centre }];
  });
}
