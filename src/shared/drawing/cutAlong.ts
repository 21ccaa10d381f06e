import { accept, type Maybe, refuse } from '../measure/finding.ts';
import { checkDrawing } from './check.ts';
import type { Drawing } from './drawing.ts';
import { halfway, isOnEdge, type Leg, meetings } from './meet.ts';
import { distance, MEANT } from './near.ts';
import { type Cut, maybeSplitPatch, patchAt } from './split.ts';
import { placeText } from './spot.ts';
import { type Point, turnPoint } from './turn.ts';
import { turnsOf, type Ways } from './ways.ts';

/** A way across a drawing from an edge to an edge, over as many patches as it meets. */
export interface CutWay {
  /** Its places in order: the first and the last on edges, those between anywhere. Grid units. */
  readonly places: readonly Point[];
  /** It is one arc about this place, the shorter way round; it then has two places. */
  readonly centre?: Point;
}

/** A block may have this many patches; beyond it a block is no longer sewn. */
export const MOST_PATCHES = 1500;

/**
 * Cuts every patch that a way crosses, and every patch that its images cross. The parts keep the role they were cut from.
 * Images that are seams already, or that do not apply, are passed over; the way itself must.
 * @returns the drawing after the cut, or why it cannot be, with its place
 */
export function maybeCutAlong(drawing: Drawing, way: CutWay, ways: Ways = 'once'): Maybe<Drawing> {
  const cut = cutOnce(drawing, way);
  if (!cut.ok) return cut;
  let now = cut.value;
  for (const turn of turnsOf(ways, drawing.width, drawing.height).slice(1)) {
    const move = (place: Point) => turnPoint(place, turn, drawing.width, drawing.height);
    const image = cutOnce(now, {
      places: way.places.map(move),
      ...(way.centre === undefined ? {} : { centre: move(way.centre) }),
    });
    if (image.ok) now = image.value;
  }
  if (now.patches.length > MOST_PATCHES) {
    const what = `The block would have ${now.patches.length} patches; the most is ${MOST_PATCHES}.`;
    return refuse(what, 'patches', 'Join patches, or draw a smaller part and repeat the block.');
  }
  const wrong = checkDrawing(now, 'patches');
  return wrong.length > 0 ? { ok: false, findings: wrong } : accept(now);
}

function cutOnce(drawing: Drawing, way: CutWay): Maybe<Drawing> {
  const cuts = cutsAlong(drawing, way);
  if (!cuts.ok) return cuts;
  if (cuts.value.length === 0) {
    const middle = halfway(legsOf(way)[0] as Leg);
    return refuse(`There is a seam already at ${placeText(middle)}.`, 'to', 'Cut across a patch, from edge to edge.');
  }
  let now = drawing;
  for (const cut of cuts.value) {
    const patch = patchAt(now, insideOf(cut));
    const role = patch === null ? undefined : now.patches[patch]?.role;
    if (patch === null || role === undefined) return refuse('The cut runs outside the block.', 'to');
    const next = maybeSplitPatch(now, patch, cut, role);
    if (!next.ok) return next;
    now = next.value;
  }
  return accept(now);
}

function legsOf({ places, centre }: CutWay): readonly Leg[] {
  return places.slice(1).map((to, i) => ({
    from: places[i] as Point,
    to,
    ...(centre === undefined ? {} : { centre }),
  }));
}

/** A place on the cut that is inside its patch. */
function insideOf({ from, to, through, centre }: Cut): Point {
  const first = through?.[0];
  return halfway(first === undefined ? { from, to, ...(centre && { centre }) } : { from, to: first });
}

/** The cuts from edge to edge that a way is made of; stretches along seams that are there already are left out. */
function cutsAlong(drawing: Drawing, way: CutWay): Maybe<readonly Cut[]> {
  const wrong = troubleWith(drawing, way);
  if (wrong !== null) return wrong;
  const cuts: Cut[] = [];
  let from = way.places[0] as Point;
  let through: Point[] = [];
  for (const leg of legsOf(way)) {
    for (const { place } of meetings(drawing, leg)) {
      const moved = through.length > 0 || distance(from, place) >= MEANT;
      if (!moved) continue;
      const cut: Cut = {
        from,
        to: place,
        ...(through.length > 0 && { through }),
        ...(way.centre && { centre: way.centre }),
      };
      if (!isOnEdge(drawing, insideOf(cut))) cuts.push(cut);
      from = place;
      through = [];
    }
    if (distance(from, leg.to) >= MEANT) through.push(leg.to);
  }
  return accept(cuts);
}

function troubleWith(drawing: Drawing, { places, centre }: CutWay): ReturnType<typeof refuse> | null {
  const [first, last] = [places[0], places.at(-1)];
  if (first === undefined || last === undefined || places.length < 2)
    return refuse('A cut needs a start and an end.', 'from');
  const still = places.slice(1).find((place, i) => distance(place, places[i] as Point) < MEANT);
  if (still !== undefined) return refuse(`The cut stands still at ${placeText(still)}.`, 'to', 'Choose another place.');
  if (!isOnEdge(drawing, first))
    return refuse(`The cut does not start on an edge: ${placeText(first)} is inside a patch.`, 'from');
  if (!isOnEdge(drawing, last)) {
    const mend = 'Take it on to an edge; a cut that ends inside a patch parts nothing.';
    return refuse(`The cut ends inside a patch, at ${placeText(last)}.`, 'to', mend);
  }
  if (centre === undefined) return null;
  const even = Math.abs(distance(first, centre) - distance(last, centre)) < 2 * MEANT;
  return even && distance(first, centre) > MEANT
    ? null
    : refuse('The ends of the arc are not equally far from its centre.', 'centre');
}
