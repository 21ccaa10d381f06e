import type { Drawing, Patch } from '../../drawing/drawing.ts';
import { type Turn, turnBox, turnPoint } from '../../drawing/turn.ts';
import type { BlockLeaf } from '../../quilt/quilt.ts';
import type { Side } from '../../recipe/schema.ts';

/** Where one patch lies on a side of its block, in parts of that side's length, left to right or top to bottom. */
export interface OnEdge {
  readonly side: Side;
  readonly patch: number;
  readonly from: number;
  readonly to: number;
}

/** The patches of a block along its four sides, as the block is turned. */
export function patchesOnEdges(drawing: Drawing, turn: Turn): readonly OnEdge[] {
  const { width, height } = turnBox(
    { x: 0, y: 0, width: drawing.width, height: drawing.height },
    turn,
    drawing.width,
    drawing.height,
  );
  return drawing.patches.flatMap((patch, index) =>
    edgesOf(drawing, patch, turn).flatMap(([a, b]): OnEdge[] => {
      const side = sideOf(a, b, width, height);
      if (side === null) return [];
      const [from, to, all] = side === 'top' || side === 'bottom' ? [a.x, b.x, width] : [a.y, b.y, height];
      return [{ side, patch: index, from: Math.min(from, to) / all, to: Math.max(from, to) / all }];
    }),
  );
}

type Spot = { readonly x: number; readonly y: number };

function edgesOf(drawing: Drawing, patch: Patch, turn: Turn): readonly (readonly [Spot, Spot])[] {
  const corners = patch.outline.map((point) => {
    return turnPoint(drawing.points[point] as Spot, turn, drawing.width, drawing.height);
  });
  return corners.map((corner, i) => [corner, corners[(i + 1) % corners.length] as Spot]);
}

/** Which side of the block an edge lies on; grid units, so ends are told from middles by far more than any rounding. */
function sideOf(a: Spot, b: Spot, width: number, height: number): Side | null {
  const near = (value: number, to: number) => Math.abs(value - to) < 1e-6;
  if (near(a.y, 0) && near(b.y, 0)) return 'top';
  if (near(a.y, height) && near(b.y, height)) return 'bottom';
  if (near(a.x, 0) && near(b.x, 0)) return 'left';
  return near(a.x, width) && near(b.x, width) ? 'right' : null;
}

/** Two blocks that stand beside one another, and the sides on which they meet. */
export interface Meeting {
  readonly a: number;
  readonly b: number;
  readonly sideOfA: Side;
  readonly sideOfB: Side;
}

/** Every pair of blocks that share a side, by their places in the list. */
export function meetings(blocks: readonly BlockLeaf[]): readonly Meeting[] {
  const at = new Map(blocks.map(({ column, row }, place) => [`${column} ${row}`, place]));
  return blocks.flatMap(({ column, row }, a): Meeting[] => {
    const right = at.get(`${column + 1} ${row}`);
    const below = at.get(`${column} ${row + 1}`);
    return [
      ...(right === undefined ? [] : [{ a, b: right, sideOfA: 'right', sideOfB: 'left' } as const]),
      ...(below === undefined ? [] : [{ a, b: below, sideOfA: 'bottom', sideOfB: 'top' } as const]),
    ];
  });
}
