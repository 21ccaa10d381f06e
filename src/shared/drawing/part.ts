import { accept, type Maybe, refuse } from '../measure/finding.ts';
import { buildDrawing } from './build.ts';
import { checkDrawing } from './check.ts';
import { type CutWay, maybeCutAlong } from './cutAlong.ts';
import type { Drawing, Polygon } from './drawing.ts';
import { placeInPatch } from './inside.ts';
import { isOnEdge, meetings } from './meet.ts';
import { distance, MEANT } from './near.ts';
import { drawingPolygons, patchPolygon } from './polygons.ts';
import { type Box, type Point, type Turn, turnPoint, turnSize } from './turn.ts';
import { tidied } from './vertex.ts';

/** A rectangle taken out of a drawing, to be set in somewhere else: polygons from its own top left corner, grid units. */
export interface DrawnPart {
  readonly width: number;
  readonly height: number;
  readonly polygons: readonly Polygon[];
}

/** What lies in a box of a drawing; patches that reach out of it are cut off at its sides. */
export function copyPart(drawing: Drawing, box: Box): DrawnPart {
  const cut = cutOut(drawing, box);
  const from = cut.ok ? cut.value : drawing;
  const inside = from.patches.filter((patch) => isWithin(placeInPatch(from, patch), box));
  const polygons = inside.map((patch) => moved(patchPolygon(from, patch), -box.x, -box.y));
  return { width: box.width, height: box.height, polygons };
}

/** The part turned or mirrored; it again starts at 0, 0. */
export function turnPart({ width, height, polygons }: DrawnPart, by: Turn): DrawnPart {
  const move = (place: Point) => turnPoint(place, by, width, height);
  const turned = polygons.map(({ role, corners }) => ({
    role,
    corners: corners.map(({ centre, ...place }) =>
      centre === undefined ? move(place) : { ...move(place), centre: move(centre) },
    ),
  }));
  return { ...turnSize(width, height, by), polygons: turned };
}

/**
 * Sets a part into a drawing in place of what is there.
 * @param at where its top left corner comes to lie, grid units
 * @returns the drawing with it, or why it cannot be
 */
export function maybePastePart(drawing: Drawing, part: DrawnPart, at: Point): Maybe<Drawing> {
  const box: Box = { ...at, width: part.width, height: part.height };
  const over = box.x + box.width > drawing.width + MEANT || box.y + box.height > drawing.height + MEANT;
  if (box.x < -MEANT || box.y < -MEANT || over) {
    return refuse('Set there, the copied part would reach out of the block.', 'at', 'Move it back in.');
  }
  const cut = cutOut(drawing, box);
  if (!cut.ok) return cut;
  const around = drawingPolygons({
    ...cut.value,
    patches: cut.value.patches.filter((patch) => !isWithin(placeInPatch(cut.value, patch), box)),
  });
  const set = part.polygons.map((polygon) => moved(polygon, at.x, at.y));
  const built = tidied(buildDrawing(drawing.width, drawing.height, [...around, ...set]));
  const wrong = checkDrawing(built, 'at');
  return wrong.length > 0 ? { ok: false, findings: wrong } : accept(built);
}

/** The drawing cut all round a box; the very same drawing when there are seams all round already. */
function cutOut(drawing: Drawing, box: Box): Maybe<Drawing> {
  const way = wayRound(drawing, box);
  if (way === null) {
    const mend = 'Cut the patch there first, or set the part at an edge.';
    return refuse('The part would lie inside one patch like an island, which no seam can reach.', 'at', mend);
  }
  const cut = maybeCutAlong(drawing, way);
  const sewnRound = !cut.ok && cut.findings.every(({ what }) => what.startsWith('There is a seam already'));
  return sewnRound ? accept(drawing) : cut;
}

/** Round a box from a place where it meets the drawing, and back there; null when it meets it nowhere. */
function wayRound(drawing: Drawing, { x, y, width, height }: Box): CutWay | null {
  const corners: readonly Point[] = [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ];
  for (const [i, from] of corners.entries()) {
    const rest = [...corners.slice(i + 1), ...corners.slice(0, i)];
    if (isOnEdge(drawing, from)) return { places: [from, ...rest, from] };
    const [first] = meetings(drawing, { from, to: rest[0] as Point });
    if (first === undefined) continue;
    const after = distance(first.place, rest[0] as Point) < MEANT ? rest.slice(1) : rest;
    return { places: [first.place, ...after, from, first.place] };
  }
  return null;
}

function isWithin({ x, y }: Point, box: Box): boolean {
  return x > box.x && y > box.y && x < box.x + box.width && y < box.y + box.height;
}

function moved({ role, corners }: Polygon, x: number, y: number): Polygon {
  const by = (place: Point): Point => ({ x: place.x + x, y: place.y + y });
  return {
    role,
    corners: corners.map(({ centre, ...place }) =>
      centre === undefined ? by(place) : { ...by(place), centre: by(centre) },
    ),
  };
}
