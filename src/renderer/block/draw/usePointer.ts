import { type PointerEvent, useRef, useState } from 'react';
import type { Drawing } from '../../../shared/drawing/drawing.ts';
import { patchAt } from '../../../shared/drawing/split.ts';
import type { Point } from '../../../shared/drawing/turn.ts';
import { useSelection } from '../../state/hooks.tsx';
import type { Selection } from '../../state/selection.ts';
import { type Act, isOfPlaces } from './acts.ts';
import { boxOf, patchesWithin, pickedAt } from './picking.ts';
import { type SnapMark, snapTo } from './snap.ts';
import { middleOf } from './towards.ts';
import type { Hand } from './useHand.ts';
import type { Looking } from './useSight.ts';

interface PointerNeeds {
  readonly act: Act;
  readonly block: string;
  readonly drawing: Drawing;
  readonly marks: readonly SnapMark[];
  readonly hand: Hand;
  readonly looking: Looking;
  /** A copied part is being set in: where its corner would be, and what a click does. */
  readonly setting: { at(place: Point): void; set(): void } | null;
}

/** What the pointer is over. */
export interface Over {
  readonly mark: SnapMark | null;
  readonly patch: number | null;
  readonly place: Point;
}

/** How near a mark or a seam the pointer must come to mean it, pixels. */
const REACH = 12;
const SEAM_REACH = 5;
/** A hand that trembles is not dragging. */
const STILL = 5;

interface Drag {
  readonly what: 'pan' | 'place' | 'paint' | 'box';
  readonly spot: Point;
  readonly place: Point;
  /** Whether this press began the act, so that letting go elsewhere gives its next place. */
  readonly began: boolean;
}

/** Clicks and drags on the drawing: places for the act in hand, a stroke of the brush, a box, or moving the sheet. */
export function usePointer({ act, block, drawing, marks, hand, looking, setting }: PointerNeeds) {
  const [over, setOver] = useState<Over | null>(null);
  const [box, setBox] = useState<readonly [Point, Point] | null>(null);
  const [selection, select] = useSelection();
  const drag = useRef<Drag | null>(null);
  const last = useRef<Point>({ x: 0, y: 0 });
  const strokes = useRef(0);
  const painted = useRef<number | null>(null);

  const lookAt = (event: PointerEvent<HTMLElement>): { spot: Point; over: Over } => {
    const host = event.currentTarget.getBoundingClientRect();
    const spot = { x: event.clientX - host.left, y: event.clientY - host.top };
    const place = looking.placeAt(spot);
    const mark = isOfPlaces(act) || setting !== null ? snapTo(place, marks, REACH / looking.sight.scale) : null;
    return { spot, over: { mark, patch: patchAt(drawing, place), place } };
  };

  const paint = (patch: number | null) => {
    if (patch === null || painted.current === patch) return;
    painted.current = patch;
    hand.give(middleOf(drawing, patch), `fill ${strokes.current}`);
  };

  const giveAt = ({ mark, patch }: Over) => {
    if (isOfPlaces(act)) {
      if (mark !== null) hand.give(mark.place);
    } else if (patch !== null) hand.give(middleOf(drawing, patch));
  };

  const down = (event: PointerEvent<HTMLElement>) => {
    const { spot, over: here } = lookAt(event);
    if (event.button !== 0 && event.button !== 1) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    last.current = spot;
    const begin = (what: Drag['what'], began = false) => {
      drag.current = { what, spot, place: here.place, began };
    };
    if (event.button === 1 || event.altKey) return begin('pan');
    if (setting !== null) return begin('place');
    if (act === 'select') return begin('box');
    if (act === 'fill' || act === 'flood') {
      strokes.current += 1;
      painted.current = null;
      begin('paint');
      if (act === 'fill') paint(here.patch);
      return;
    }
    const began = hand.places.length === 0;
    begin('place', began);
    if (began) giveAt(here);
  };

  const move = (event: PointerEvent<HTMLElement>) => {
    const { spot, over: here } = lookAt(event);
    setOver(here);
    const now = drag.current;
    if (setting !== null && here.mark !== null) setting.at(here.mark.place);
    if (now?.what === 'pan') looking.pan({ x: spot.x - last.current.x, y: spot.y - last.current.y });
    if (now?.what === 'paint' && act === 'fill') paint(here.patch);
    if (now?.what === 'box' && isFar(now.spot, spot)) setBox([now.place, here.place]);
    last.current = spot;
  };

  const up = (event: PointerEvent<HTMLElement>) => {
    const { spot, over: here } = lookAt(event);
    const now = drag.current;
    drag.current = null;
    setBox(null);
    if (now === null || now.what === 'pan') return;
    if (setting !== null) return setting.set();
    if (now.what === 'paint') return act === 'flood' ? giveAt(here) : undefined;
    if (now.what === 'place') return now.began && !isFar(now.spot, spot) ? undefined : giveAt(here);
    select(chosen(event, now, spot, here));
  };

  const chosen = (event: PointerEvent, { spot: from, place }: Drag, spot: Point, here: Over): Selection => {
    const more = event.shiftKey || event.ctrlKey || event.metaKey;
    if (!isFar(from, spot))
      return pickedAt(drawing, block, here.place, SEAM_REACH / looking.sight.scale, more, selection);
    const inside = patchesWithin(drawing, boxOf(place, here.place));
    const before = more && selection.kind === 'patches' && selection.block === block ? selection.patches : [];
    const patches = [...new Set([...before, ...inside])];
    return patches.length === 0 ? { kind: 'block', block } : { kind: 'patches', block, patches };
  };

  return {
    over,
    box,
    handlers: {
      onPointerDown: down,
      onPointerMove: move,
      onPointerUp: up,
      onPointerLeave: () => setOver(null),
      onPointerCancel: () => {
        drag.current = null;
        setBox(null);
      },
    },
  };
}

function isFar(a: Point, b: Point): boolean {
  return Math.hypot(a.x - b.x, a.y - b.y) > STILL;
}
