import { type CutWay, maybeCutAlong } from '../../drawing/cutAlong.ts';
import type { Drawing } from '../../drawing/drawing.ts';
import { maybeMergePatches, maybeMoveVertex } from '../../drawing/merge.ts';
import { type DrawnPart, maybePastePart, turnPart } from '../../drawing/part.ts';
import { patchAt } from '../../drawing/split.ts';
import { gridText, placeText } from '../../drawing/spot.ts';
import { type Point, type Turn, turnPoint } from '../../drawing/turn.ts';
import { vertexAt } from '../../drawing/vertex.ts';
import { imagesOf, turnsOf, type Ways } from '../../drawing/ways.ts';
import { floodRole, neighboursOf, setRole } from '../../drawing/whole.ts';
import { accept, type Maybe, refuse } from '../../measure/finding.ts';
import { atText, drawingEdit, type OfRecipe, roleName } from './drawn.ts';

/** How an act is repeated over the block; left out, it is done once. */
interface InWays extends OfRecipe {
  readonly ways?: Ways;
}

function waysText(ways: Ways = 'once'): string {
  const many = turnsOf(ways, 1, 1).length;
  return many === 1 ? '' : ` ${many} ways`;
}

type Places = readonly Point[];

export const cutPatch = drawingEdit<InWays & CutWay>(
  'cut-patch',
  ({ places, centre, ways }) =>
    `${centre === undefined ? 'Cut' : 'Cut an arc'}${waysText(ways)}${fromTo(places[0], places.at(-1))}`,
  (drawing, { places, centre, ways }) =>
    maybeCutAlong(drawing, centre === undefined ? { places } : { places, centre }, ways),
);

function fromTo(from: Point | undefined, to: Point | undefined): string {
  return from === undefined || to === undefined ? '' : ` from ${spot(from)} to ${spot(to)}`;
}

/** “2, 1”: short enough to stand beside “Undo”. */
function spot({ x, y }: Point): string {
  return `${gridText(x)}, ${gridText(y)}`;
}

/** Joins the patches that hold these places into one; it keeps the role of the first. */
export const mergePatches = drawingEdit<InWays & { readonly places: Places }>(
  'merge-patches',
  ({ places, ways }) => `Join ${places.length} patches${waysText(ways)}`,
  (drawing, { places, ways = 'once' }) => inWays(drawing, ways, (now, move) => maybeJoin(now, places.map(move))),
);

/** The act at its own places, which must do, then at their images, which may. */
function inWays(
  drawing: Drawing,
  ways: Ways,
  act: (drawing: Drawing, move: (place: Point) => Point) => Maybe<Drawing>,
): Maybe<Drawing> {
  const { width, height } = drawing;
  const first = act(drawing, (place) => place);
  if (!first.ok) return first;
  return accept(
    turnsOf(ways, width, height)
      .slice(1)
      .reduce((now, turn) => {
        const next = act(now, (place) => turnPoint(place, turn, width, height));
        return next.ok ? next.value : now;
      }, first.value),
  );
}

function maybeJoin(drawing: Drawing, places: Places): Maybe<Drawing> {
  const wanted = [...new Set(places.map((place) => patchAt(drawing, place)))];
  if (wanted.includes(null) || wanted.length < 2)
    return refuse('Two different patches are needed to join.', 'places', 'Choose a patch, then its neighbour.');
  const [first, ...rest] = places as readonly [Point, ...Point[]];
  let now = drawing;
  let left: Places = rest;
  while (left.length > 0) {
    const whole = patchAt(now, first) as number;
    left = left.filter((place) => patchAt(now, place) !== whole);
    const next = left.find((place) => neighboursOf(now)[whole]?.includes(patchAt(now, place) as number)) ?? left[0];
    if (next === undefined) break;
    const joined = maybeMergePatches(now, whole, patchAt(now, next) as number);
    if (!joined.ok) return joined;
    now = joined.value;
  }
  return accept(now);
}

export const moveVertex = drawingEdit<InWays & { readonly from: Point; readonly to: Point }>(
  'move-vertex',
  ({ from, to, ways }) => `Move a corner${waysText(ways)}${fromTo(from, to)}`,
  (drawing, { from, to, ways = 'once' }) =>
    inWays(drawing, ways, (now, move) => {
      const vertex = vertexAt(now, move(from));
      if (vertex === null) return refuse(`There is no corner at ${placeText(from)}.`, 'from');
      return maybeMoveVertex(now, vertex, move(to));
    }),
);

export const setPatchRole = drawingEdit<InWays & { readonly places: Places; readonly role: string }>(
  'set-patch-role',
  ({ recipe, places, role, ways }, pattern) => {
    const what = places.length === 1 ? 'a patch' : `${places.length} patches`;
    return `Make ${what} ${roleName(pattern, recipe, role)}${waysText(ways)}`;
  },
  (drawing, { places, role, ways = 'once' }) => {
    const all = places.flatMap((place) => imagesOf(place, ways, drawing.width, drawing.height));
    return accept(all.reduce((now, place) => filled(now, place, role), drawing));
  },
);

function filled(drawing: Drawing, place: Point, role: string): Drawing {
  const patch = patchAt(drawing, place);
  return patch === null ? drawing : setRole(drawing, patch, role);
}

export const floodPatchRole = drawingEdit<InWays & { readonly place: Point; readonly role: string }>(
  'flood-patch-role',
  ({ recipe, role, ways }, pattern) => `Flood with ${roleName(pattern, recipe, role)}${waysText(ways)}`,
  (drawing, { place, role, ways = 'once' }) => {
    const all = imagesOf(place, ways, drawing.width, drawing.height);
    return accept(
      all.reduce((now, one) => {
        const patch = patchAt(now, one);
        return patch === null ? now : floodRole(now, patch, role);
      }, drawing),
    );
  },
);

/** Sets a copied part of a drawing in, turned, with its top left corner at a place. */
export const pastePart = drawingEdit<OfRecipe & { readonly part: DrawnPart; readonly at: Point; readonly by: Turn }>(
  'paste-part',
  ({ at }) => `Set in a copied part${atText(at)}`,
  (drawing, { part, at, by }) => maybePastePart(drawing, turnPart(part, by), at),
);
