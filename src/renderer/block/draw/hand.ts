import { distance } from '../../../shared/drawing/near.ts';
import { placeText } from '../../../shared/drawing/spot.ts';
import type { Point } from '../../../shared/drawing/turn.ts';
import type { Act } from './acts.ts';

/** What a hand has done once it has given all the places an act needs. */
export type Deed =
  | { readonly kind: 'cut'; readonly places: readonly Point[]; readonly centre?: Point }
  | { readonly kind: 'join'; readonly places: readonly [Point, Point] }
  | { readonly kind: 'move'; readonly from: Point; readonly to: Point };

/** What comes of a place given: the places so far, a deed when they are enough, or why the place will not do. */
export interface Pressed {
  readonly places: readonly Point[];
  readonly deed?: Deed;
  readonly trouble?: string;
  /** What has begun, to be spoken. */
  readonly said?: string;
}

/** What the hand has to know of the drawing. */
export interface Ground {
  isOnEdge(place: Point): boolean;
  isCorner(place: Point): boolean;
  /** Whether two places lie in one patch. */
  isSamePatch(a: Point, b: Point): boolean;
}

const SAME = 1e-6;

/** The hand gives one more place. Acts that need a single place are not asked here. */
export function press(act: Act, places: readonly Point[], place: Point, ground: Ground): Pressed {
  if (act === 'cut') return pressCut(places, place, ground);
  if (act === 'arc') return pressArc(places, place, ground);
  if (act === 'join') return pressJoin(places, place, ground);
  if (act === 'move') return pressMove(places, place, ground);
  return { places };
}

function pressCut(places: readonly Point[], place: Point, ground: Ground): Pressed {
  const last = places.at(-1);
  const onEdge = ground.isOnEdge(place);
  if (last === undefined) {
    if (!onEdge) return { places, trouble: 'A cut starts on an edge or at a corner.' };
    return { places: [place], said: `The cut begins at ${placeText(place)}.` };
  }
  if (distance(last, place) < SAME) return { places };
  const all = [...places, place];
  if (onEdge) return { places, deed: { kind: 'cut', places: all } };
  return { places: all, said: `The cut bends at ${placeText(place)}.` };
}

function pressArc(places: readonly Point[], place: Point, ground: Ground): Pressed {
  const [centre, start] = places;
  if (centre === undefined) return { places: [place], said: `The compass stands at ${placeText(place)}.` };
  if (distance(places.at(-1) as Point, place) < SAME) return { places };
  if (!ground.isOnEdge(place)) return { places, trouble: 'The compass is opened, and swung, to a place on an edge.' };
  if (start === undefined) return { places: [centre, place], said: `Opened to ${placeText(place)}.` };
  return { places, deed: { kind: 'cut', places: [start, place], centre } };
}

function pressJoin([first]: readonly Point[], place: Point, ground: Ground): Pressed {
  if (first === undefined) return { places: [place], said: 'Now the neighbour it is to be one with.' };
  if (ground.isSamePatch(first, place)) return { places: [] };
  return { places: [first], deed: { kind: 'join', places: [first, place] } };
}

function pressMove([from]: readonly Point[], place: Point, ground: Ground): Pressed {
  if (from === undefined) {
    if (!ground.isCorner(place)) return { places: [], trouble: 'There is no corner here to move.' };
    return { places: [place], said: `The corner at ${placeText(place)} is in hand.` };
  }
  if (distance(from, place) < SAME) return { places: [from] };
  return { places: [from], deed: { kind: 'move', from, to: place } };
}
