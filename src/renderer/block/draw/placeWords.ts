import { arcBetween, pointAt } from '../../../shared/drawing/curve.ts';
import type { Drawing } from '../../../shared/drawing/drawing.ts';
import { alongOf } from '../../../shared/drawing/meet.ts';
import { distance, MEANT } from '../../../shared/drawing/near.ts';
import { patchAt } from '../../../shared/drawing/split.ts';
import { placeText } from '../../../shared/drawing/spot.ts';
import type { Point } from '../../../shared/drawing/turn.ts';

/** What a role is called. */
export type RoleName = (role: string) => string;

/** A place and what is there, as it is spoken: “3 across, 2 down, corner of Star points”. */
export function placeWords(drawing: Drawing, place: Point, roleName: RoleName): string {
  return `${placeText(place)}, ${thingAt(drawing, place, roleName)}`;
}

function thingAt(drawing: Drawing, place: Point, roleName: RoleName): string {
  const vertex = drawing.points.findIndex((point) => distance(point, place) < MEANT);
  if (vertex >= 0) {
    const here = drawing.patches.filter(({ outline }) => outline.includes(vertex));
    return `corner of ${named(here, roleName)}`;
  }
  const beside = drawing.patches.filter(({ outline }) =>
    outline.some((a, i) => isOn(drawing, a, outline[(i + 1) % outline.length] as number, place)),
  );
  if (beside.length > 0) return `edge of ${named(beside, roleName)}`;
  const patch = patchAt(drawing, place);
  const role = patch === null ? undefined : drawing.patches[patch]?.role;
  return role === undefined ? 'outside the block' : `inside ${roleName(role)}`;
}

function isOn(drawing: Drawing, a: number, b: number, place: Point): boolean {
  const centre = arcBetween(drawing, a, b)?.centre;
  const leg = { from: pointAt(drawing, a), to: pointAt(drawing, b), ...(centre === undefined ? {} : { centre }) };
  return alongOf(leg, place) !== null;
}

function named(patches: Drawing['patches'], roleName: RoleName): string {
  const names = [...new Set(patches.map(({ role }) => roleName(role)))];
  const last = names.at(-1) ?? 'nothing';
  return names.length < 2 ? last : `${names.slice(0, -1).join(', ')} and ${last}`;
}

/** A patch as it is spoken: “Star points, patch 3 of 12, about 2½ across, 1 down”. */
export function patchWords(drawing: Drawing, patch: number, at: Point, roleName: RoleName): string {
  const role = drawing.patches[patch]?.role ?? '';
  const spot = placeText({ x: Math.round(at.x * 4) / 4, y: Math.round(at.y * 4) / 4 });
  return `${roleName(role)}, patch ${patch + 1} of ${drawing.patches.length}, about ${spot}`;
}
