import { buildDrawing } from '../drawing/build.ts';
import { checkDrawing } from '../drawing/check.ts';
import type { Drawing } from '../drawing/drawing.ts';
import { type Cut, maybeSplitPatch, patchAt } from '../drawing/split.ts';
import { placeText } from '../drawing/spot.ts';
import { accept, type Finding, type Maybe } from '../measure/finding.ts';
import type { DrawingBody } from './schema.ts';

/** Drawings that have been read and are sound. A body never changes, so what was read once holds for good. */
const sound = new WeakMap<DrawingBody, Drawing>();

/**
 * A body that is drawn freely, as a drawing: from its patches, or from its whole cut step by step.
 * @param path where the body stands in the document
 * @returns a sound drawing, or what is wrong with it and where
 */
export function readDrawnBody(body: DrawingBody, path: string): Maybe<Drawing> {
  const known = sound.get(body);
  if (known !== undefined) return accept(known);
  const read = readAnew(body, path);
  if (read.ok) sound.set(body, read.value);
  return read;
}

function readAnew(body: DrawingBody, path: string): Maybe<Drawing> {
  const drawing = body.patches !== undefined ? fromPatches(body, body.patches) : fromSplits(body, path);
  if ('ok' in drawing) return drawing;
  const wrong = [...bothWays(body, path), ...checkDrawing(drawing, path)];
  return wrong.length > 0 ? { ok: false, findings: wrong } : accept(drawing);
}

function bothWays(body: DrawingBody, path: string): readonly Finding[] {
  if (body.patches === undefined || body.splits === undefined) return [];
  const what = 'The block is drawn twice: by patches and by cuts.';
  return [{ level: 'stops', what, where: { path: `${path}.splits` }, mend: 'Leave one of them out.' }];
}

function fromPatches(body: DrawingBody, patches: NonNullable<DrawingBody['patches']>): Drawing {
  const polygons = patches.map(({ role, corners }) => ({
    role,
    corners: corners.map(([x, y, cx, cy]) =>
      cx === undefined || cy === undefined ? { x, y } : { x, y, centre: { x: cx, y: cy } },
    ),
  }));
  return buildDrawing(body.width, body.height, polygons);
}

function fromSplits(body: DrawingBody, path: string): Drawing | Extract<Maybe<Drawing>, { ok: false }> {
  if (body.role === undefined) {
    const what = 'A block drawn by cuts needs the role of the whole before the first cut.';
    return { ok: false, findings: [{ level: 'stops', what, where: { path: `${path}.role` } }] };
  }
  const { width, height } = body;
  const corners = [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: height },
    { x: 0, y: height },
  ];
  let drawing = buildDrawing(width, height, [{ role: body.role, corners }]);
  for (const [index, split] of (body.splits ?? []).entries()) {
    const inside = placeOf(split.inside);
    const patch = patchAt(drawing, inside);
    const at = `${path}.splits[${index}]`;
    if (patch === null) {
      const what = `No patch holds the place ${placeText(inside)}: it lies on an edge or outside.`;
      return { ok: false, findings: [{ level: 'stops', what, where: { path: `${at}.inside` } }] };
    }
    const cut = maybeSplitPatch(drawing, patch, cutOf(split), split.role);
    if (!cut.ok) {
      const findings = cut.findings.map((finding) => ({ ...finding, where: { path: `${at}.${finding.where.path}` } }));
      return { ok: false, findings };
    }
    drawing = cut.value;
  }
  return drawing;
}

function placeOf([x, y]: readonly [number, number]): Cut['from'] {
  return { x, y };
}

function cutOf(split: NonNullable<DrawingBody['splits']>[number]): Cut {
  return {
    from: placeOf(split.from),
    to: placeOf(split.to),
    ...(split.through === undefined ? {} : { through: split.through.map(placeOf) }),
    ...(split.centre === undefined ? {} : { centre: placeOf(split.centre) }),
  };
}

/** A drawing as the body of a recipe, patch by patch; it reads back as the same drawing. */
export function drawnBody(drawing: Drawing): DrawingBody {
  const patches = drawing.patches.map(({ role, outline }) => ({
    role,
    corners: outline.map((vertex, i): [number, number] | [number, number, number, number] => {
      const before = outline[(i + outline.length - 1) % outline.length];
      const arc = drawing.arcs?.find(({ a, b }) => (a === before && b === vertex) || (a === vertex && b === before));
      const { x, y } = drawing.points[vertex] as Cut['from'];
      return arc === undefined ? [x, y] : [x, y, arc.centre.x, arc.centre.y];
    }),
  }));
  return { kind: 'drawing', width: drawing.width, height: drawing.height, patches };
}
