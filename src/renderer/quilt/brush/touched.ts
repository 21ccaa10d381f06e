import { outlinePoints } from '../../../shared/drawing/curve.ts';
import { isInside } from '../../../shared/drawing/near.ts';
import { type Point, turnPoint, undoTurn } from '../../../shared/drawing/turn.ts';
import { outlineOf } from '../../../shared/quilt/onPoint/pieces.ts';
import type { BlockLeaf, PatchLeaf, Quilt, StripLeaf, TriangleLeaf } from '../../../shared/quilt/quilt.ts';
import { wholeBox } from '../../../shared/quilt/wholeBox.ts';
import type { WorkedBlock } from '../../../shared/workroom/workedOut.ts';
import { holds, inUprightBox } from '../quiltGround.ts';

/** What lies under a point of the quilt: a patch of a block by its role, or a plain piece. */
export type Touched =
  | { readonly kind: 'role'; readonly leaf: BlockLeaf; readonly role: string }
  | { readonly kind: 'piece'; readonly piece: StripLeaf | PatchLeaf | TriangleLeaf };

/** What a hand touches at a point; null beside the quilt. */
export function touchedAt(quilt: Quilt, blocks: readonly WorkedBlock[], at: Point): Touched | null {
  const leaf = quilt.blocks.find((one) => holds(one, at));
  if (leaf !== undefined) {
    const role = roleAt(leaf, blocks, at);
    return role === null ? null : { kind: 'role', leaf, role };
  }
  const pieces = [...quilt.patches, ...quilt.triangles, ...quilt.strips];
  const piece = pieces.find((one) => isInside(at, outlineOf(one)));
  return piece === undefined ? null : { kind: 'piece', piece };
}

/** The role of the patch of a block that lies under a point of the quilt. */
function roleAt(leaf: BlockLeaf, blocks: readonly WorkedBlock[], at: Point): string | null {
  const drawing = blocks.find(({ id }) => id === leaf.block)?.piecing.drawing;
  if (drawing === undefined) return null;
  const box = wholeBox(leaf);
  const lying = inUprightBox(leaf, at);
  const across = leaf.turn.quarters % 2 === 0 ? drawing.width : drawing.height;
  const grid = box.width / across;
  const point = { x: (lying.x - box.x) / grid, y: (lying.y - box.y) / grid };
  const own = turnPoint(point, undoTurn(leaf.turn), box.width / grid, box.height / grid);
  return drawing.patches.find((patch) => isInside(own, outlinePoints(drawing, patch)))?.role ?? null;
}

/** Points along a drawn way, close enough that nothing is passed over. @param step inches */
export function alongWay(way: readonly Point[], step: number): readonly Point[] {
  return way.flatMap((to, i) => {
    const from = way[i - 1];
    if (from === undefined) return [to];
    const many = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / step));
    return Array.from({ length: many }, (_, n) => {
      const share = (n + 1) / many;
      return { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share };
    });
  });
}
