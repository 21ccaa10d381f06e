import { outlinePoints } from '../drawing/curve.ts';
import type { Drawing } from '../drawing/drawing.ts';
import { type Point, type Turn, turnPoint } from '../drawing/turn.ts';
import type { Inches } from '../measure/inches.ts';
import type { Area } from './figure.ts';
import type { FabricOf } from './marks.ts';

/** Outlines sorted by the fabric they are cut from; a role without a fabric is bare paper, under null. */
export type ByFabric = ReadonlyMap<string | null, readonly (readonly Point[])[]>;

/**
 * A block's patches in finished inches from its top left corner, turned, sorted by fabric.
 * @param patches indices of the patches wanted; left out, all of them
 */
export function patchesByFabric(
  drawing: Drawing,
  grid: Inches,
  fabricOf: FabricOf,
  turn: Turn,
  patches?: readonly number[],
): ByFabric {
  const [w, h] = [drawing.width * grid, drawing.height * grid];
  const found = new Map<string | null, (readonly Point[])[]>();
  const wanted = patches === undefined ? drawing.patches : patches.map((index) => drawing.patches[index]);
  for (const patch of wanted) {
    if (patch === undefined) continue;
    const corners = cornersOnly(outlinePoints(drawing, patch));
    const outline = corners.map(({ x, y }) => turnPoint({ x: x * grid, y: y * grid }, turn, w, h));
    const fabric = fabricOf[patch.role] ?? null;
    const known = found.get(fabric);
    if (known === undefined) found.set(fabric, [outline]);
    else known.push(outline);
  }
  return found;
}

/** A patch also has its neighbours' corners on its outline; a figure needs only its own. */
function cornersOnly(outline: readonly Point[]): readonly Point[] {
  return outline.filter((b, i) => {
    const a = outline[(i + outline.length - 1) % outline.length] as Point;
    const c = outline[(i + 1) % outline.length] as Point;
    return Math.abs((b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x)) > 1e-9;
  });
}

/** One area for each fabric. */
export function areasOf(cloth: ByFabric, tone: Area['tone'], edge: Area['edge'], of?: string): readonly Area[] {
  return [...cloth].map(([fabric, outlines]) => {
    return { kind: 'area', outlines, fabric, tone, edge, ...(of === undefined ? {} : { of }) };
  });
}

/** A block as figures need it: what the working out of a pattern has of each. */
export interface FigureBlock {
  readonly id: string;
  readonly piecing: { readonly drawing: Drawing };
  readonly fabricOf: FabricOf;
}
