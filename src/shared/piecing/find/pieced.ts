import { buildDrawing } from '../../drawing/build.ts';
import type { Patch } from '../../drawing/drawing.ts';
import { patchPolygon } from '../../drawing/polygons.ts';
import type { Point } from '../../drawing/turn.ts';
import { UNTURNED } from '../../drawing/turn.ts';
import { tidied } from '../../drawing/vertex.ts';
import type { LooseLeaf } from '../sub.ts';
import { boxOf, type Field } from './field.ts';
import type { Region } from './fieldPatch.ts';
import { seamsWithUnits } from './made/choose.ts';
import type { PinnedSeam } from './seams/seams.ts';

/**
 * A rectangle that is no unit of the trade as a unit of its own: its patches as a small drawing, and the tree of seams that
 * sews them.
 * @param pinned seams the designer wants last, in the whole drawing's grid units
 */
export function piecedLeaf(
  field: Field,
  region: Region,
  patches: readonly number[],
  pinned: readonly PinnedSeam[],
): LooseLeaf {
  const box = boxOf(field, region);
  const here = ({ x, y }: Point): Point => ({ x: x - box.x, y: y - box.y });
  const polygons = patches.map((index) => {
    // With every vertex: two arcs between the same two corners are told apart by the vertices on them.
    const { corners, role } = patchPolygon(field.drawing, field.drawing.patches[index] as Patch);
    const moved = corners.map((corner) =>
      corner.centre === undefined ? here(corner) : { ...here(corner), centre: here(corner.centre) },
    );
    return { role, corners: moved };
  });
  const { width, height } = box;
  const drawing = tidied(buildDrawing(width, height, polygons));
  const seams = seamsWithUnits(
    drawing,
    pinned.map(([a, b]) => [here(a), here(b)]),
  );
  return { kind: 'unit', shape: { kind: 'pieced', width, height, drawing, seams }, turn: UNTURNED, box, patches };
}
