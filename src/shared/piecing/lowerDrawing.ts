import type { Drawing } from '../drawing/drawing.ts';
import { drawingPolygons } from '../drawing/polygons.ts';
import { readDrawnBody } from '../recipe/drawn.ts';
import type { DrawingBody } from '../recipe/schema.ts';
import { findSewing } from './find/pieceDrawing.ts';
import type { Pin } from './find/pins.ts';
import { type Lowering, roleOf } from './lowering.ts';
import type { Sub } from './sub.ts';

/** A body that is drawn freely: its patches as they are drawn, and the sewing found for them. */
export function lowerDrawing(on: Lowering, body: DrawingBody): Sub | null {
  const path = on.path === '' ? 'body' : `${on.path}.body`;
  const known = on.findings.length;
  const roles = new Map(rolesIn(body).map(({ role, where }) => [role, roleOf(on, role, where)]));
  const read = readDrawnBody(body, path);
  if (!read.ok) on.findings.push(...read.findings);
  if (!read.ok || on.findings.length > known) return null;
  const { width, height } = read.value;
  const patches = read.value.patches.map((patch) => ({ ...patch, role: roles.get(patch.role) ?? patch.role }));
  const drawing = { ...read.value, patches };
  const { root, findings } = sewingOf(body, drawing, path);
  on.notes.push(...findings);
  return { width, height, polygons: drawingPolygons(drawing), root };
}

type Sewing = ReturnType<typeof findSewing>;

/** What was found for a body once; a body never changes, so acts on the rest of a pattern need not search again. */
const found = new WeakMap<DrawingBody, Map<string, Sewing>>();

function sewingOf(body: DrawingBody, drawing: Drawing, path: string): Sewing {
  const asked = [path, ...drawing.patches.map(({ role }) => role)].join(' ');
  const before = found.get(body) ?? new Map<string, Sewing>();
  found.set(body, before);
  const known = before.get(asked);
  if (known !== undefined) return known;
  const sewing = findSewing(drawing, { pins: (body.pins ?? []).map(pinOf), path });
  before.set(asked, sewing);
  return sewing;
}

function rolesIn(body: DrawingBody): readonly { readonly role: string; readonly where: string }[] {
  const patches = (body.patches ?? []).map(({ role }, i) => ({ role, where: `body.patches[${i}].role` }));
  const splits = (body.splits ?? []).map(({ role }, i) => ({ role, where: `body.splits[${i}].role` }));
  const whole = body.role === undefined ? [] : [{ role: body.role, where: 'body.role' }];
  const all = [...whole, ...patches, ...splits];
  return all.filter(({ role }, i) => all.findIndex((other) => other.role === role) === i);
}

function pinOf({ first, unit, method }: NonNullable<DrawingBody['pins']>[number]): Pin {
  const places = ([[x, y], [x2, y2]]: readonly [readonly [number, number], readonly [number, number]]) =>
    [
      { x, y },
      { x: x2, y: y2 },
    ] as const;
  return {
    ...(first === undefined ? {} : { first: places(first) }),
    ...(unit === undefined ? {} : { unit: places(unit) }),
    ...(method === undefined ? {} : { method }),
  };
}
