import type { Polygon, PolygonCorner } from '../../drawing/drawing.ts';
import { distance, MEANT } from '../../drawing/near.ts';
import { type Box, type Point, type Turn, turnPoint } from '../../drawing/turn.ts';
import type { Unit } from '../piecing.ts';
import type { Shape } from '../shape.ts';
import type { LooseLeaf } from '../sub.ts';
import { unitPolygons } from '../unitShape.ts';
import type { FieldPatch } from './fieldPatch.ts';

/** Some patches of the drawing in a box of it, each with its number. */
export interface Held {
  readonly box: Box;
  readonly patches: readonly { readonly index: number; readonly patch: HeldPatch }[];
}

/** What units are known by. */
export type HeldPatch = Pick<FieldPatch, 'role' | 'corners' | 'box' | 'isRectangle'>;

/**
 * Whether the patches in a box are a unit of this shape, lying this way. The shape's roles are only names of places, such as
 * "a" for both skies of flying geese: patches in places of one name have to have one role.
 * @returns the unit with its true roles, its patches in the order of `unitPolygons`; null when it is another thing
 */
export function matched(shape: Shape, turn: Turn, held: Held): LooseLeaf | null {
  const polygons = unitPolygons({ ...shape, key: '' } as Unit);
  if (polygons.length !== held.patches.length) return null;
  const roles = new Map<string, string>();
  const patches: number[] = [];
  for (const polygon of polygons) {
    const corners = placed(polygon, turn, shape, held.box);
    const found = held.patches.find(({ patch }) => isSameOutline(patch.corners, corners));
    if (found === undefined) return null;
    const { role } = found.patch;
    if ((roles.get(polygon.role) ?? role) !== role) return null;
    roles.set(polygon.role, role);
    patches.push(found.index);
  }
  const named = withRoles(shape, (place) => roles.get(place) ?? place);
  return { kind: 'unit', shape: named, turn, box: held.box, patches };
}

function placed({ corners }: Polygon, turn: Turn, { width, height }: Shape, { x, y }: Box): readonly PolygonCorner[] {
  const move = (point: Point): Point => {
    const turned = turnPoint(point, turn, width, height);
    return { x: turned.x + x, y: turned.y + y };
  };
  return corners.map(({ centre, ...point }) =>
    centre === undefined ? move(point) : { ...move(point), centre: move(centre) },
  );
}

/** Whether two outlines are the same, wherever each begins; both run clockwise, as unmirrored units and drawings do. */
function isSameOutline(a: readonly PolygonCorner[], b: readonly PolygonCorner[]): boolean {
  if (a.length !== b.length) return false;
  return a.some((_, start) => b.every((corner, i) => isSameCorner(a[(start + i) % a.length] as PolygonCorner, corner)));
}

function isSameCorner(a: PolygonCorner, b: PolygonCorner): boolean {
  if (distance(a, b) >= 2 * MEANT) return false;
  if (a.centre === undefined || b.centre === undefined) return a.centre === b.centre;
  return distance(a.centre, b.centre) < 2 * MEANT;
}

function withRoles(shape: Shape, role: (place: string) => string): Shape {
  const named: Record<string, unknown> = { ...shape };
  if ('role' in shape) named.role = role(shape.role);
  if ('roles' in shape) named.roles = shape.roles.map(role);
  if ('corners' in shape) named.corners = shape.corners.map((corner) => ({ ...corner, role: role(corner.role) }));
  return named as unknown as Shape;
}
