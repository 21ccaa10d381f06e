import { type KeyboardEvent, useState } from 'react';
import type { Drawing } from '../../../shared/drawing/drawing.ts';
import { placeText } from '../../../shared/drawing/spot.ts';
import type { Point, Turn } from '../../../shared/drawing/turn.ts';
import { turnOfKey } from '../../parts/turning/turnWords.ts';
import { useSelection } from '../../state/hooks.tsx';
import { type Act, isOfPlaces } from './acts.ts';
import { boxAbout, isSameStretch, seamsRound, toggled } from './picking.ts';
import { patchWords, placeWords, type RoleName } from './placeWords.ts';
import { MARK_WORDS, type SnapMark } from './snap.ts';
import { middleOf, nextPatch, stepped, wayOf } from './towards.ts';
import type { Hand } from './useHand.ts';
import type { Looking } from './useSight.ts';

interface KeysNeeds {
  readonly act: Act;
  readonly block: string;
  readonly drawing: Drawing;
  readonly roleName: RoleName;
  readonly finer: number;
  readonly marks: readonly SnapMark[];
  readonly hand: Hand;
  readonly looking: Looking;
  readonly setting: Setting | null;
  readonly copy: () => void;
  readonly paste: (at: Point) => void;
}

/** A copied part that is being set in. */
export interface Setting {
  readonly corner: Point;
  at(place: Point): void;
  set(): void;
  turn(by: Turn): void;
  giveUp(): void;
}

/** The place and the patch the keys are at, and what each key does on the drawing. */
export function useMatKeys(needs: KeysNeeds) {
  const { act, block, drawing, roleName, finer, marks, hand, looking, setting } = needs;
  const [selection, select] = useSelection();
  const [place, setPlace] = useState<Point>({ x: 0, y: 0 });
  const [patchWanted, setPatch] = useState(0);
  const [byKey, setByKey] = useState(false);
  const patch = Math.min(patchWanted, drawing.patches.length - 1);
  const cursor: Point = {
    x: Math.min(place.x, drawing.width),
    y: Math.min(place.y, drawing.height),
  };

  const goTo = (next: Point, words = placeWords(drawing, next, roleName)) => {
    setPlace(next);
    looking.bring(next);
    hand.say(words);
    return true;
  };
  const goToPatch = (next: number) => {
    setPatch(next);
    const at = middleOf(drawing, next);
    looking.bring(at);
    hand.say(patchWords(drawing, next, at, roleName));
    return true;
  };
  const walk = (by: 1 | -1) => {
    if (!isOfPlaces(act)) return goToPatch((patch + by + drawing.patches.length) % drawing.patches.length);
    const next = nextMark(marks, cursor, by);
    return next !== null && goTo(next.place, `${placeWords(drawing, next.place, roleName)}, ${MARK_WORDS[next.kind]}`);
  };
  const step = (way: Point, far: boolean) => {
    const by = far ? 1 : 1 / finer;
    if (setting !== null) {
      const next = stepped(setting.corner, way, by, drawing);
      setting.at(next);
      hand.say(placeText(next));
      return true;
    }
    return isOfPlaces(act) ? goTo(stepped(cursor, way, by, drawing)) : goToPatch(nextPatch(drawing, patch, way));
  };
  const enter = (more: boolean) => {
    if (setting !== null) setting.set();
    else if (act === 'select')
      select(more ? toggled(selection, block, patch) : { kind: 'patches', block, patches: [patch] });
    else hand.give(isOfPlaces(act) ? cursor : middleOf(drawing, patch));
    return true;
  };
  const leave = () => {
    if (setting !== null) setting.giveUp();
    else if (!hand.giveUp()) {
      if (selection.kind === 'block') return false;
      select({ kind: 'block', block });
    } else hand.say('Given up.');
    return true;
  };
  const nextSeam = () => {
    const seams = seamsRound(drawing, block, patch);
    const now = selection.kind === 'seam' ? seams.findIndex(({ whole }) => isSameStretch(whole, selection.whole)) : -1;
    const next = seams[(now + 1) % seams.length];
    if (next === undefined) return false;
    select(next);
    hand.say(`Seam from ${placeText(next.seam[0])} to ${placeText(next.seam[1])}`);
    return true;
  };

  /** Where a copied part is first shown: over what is picked, else where the keys are. */
  const pickedCorner = (): Point => {
    if (selection.kind !== 'patches') return cursor;
    const { x, y } = boxAbout(drawing, selection.patches);
    return { x, y };
  };
  const withMod = (key: string) => {
    if (key === 'c' && selection.kind === 'patches') needs.copy();
    else if (key === 'v') needs.paste(pickedCorner());
    else if (key === 'a') select({ kind: 'patches', block, patches: drawing.patches.map((_, i) => i) });
    else return false;
    return true;
  };
  const press = (event: KeyboardEvent): boolean => {
    const { key } = event;
    if (event.ctrlKey || event.metaKey) return withMod(key.toLowerCase());
    if (event.altKey) return false;
    const way = wayOf(key);
    if (way !== null) {
      hand.calm();
      return step(way, event.shiftKey);
    }
    if (key === 'Enter') return enter(event.shiftKey);
    if (key === 'Escape') return leave();
    if (key === '.') return walk(1);
    if (key === ',') return walk(-1);
    if (key === '+' || key === '=') return zoom(1.5);
    if (key === '-') return zoom(1 / 1.5);
    if (key === '0') return zoom(0);
    if (key === 'Backspace' && hand.places.length > 0) return back();
    if (key === 'e' && act === 'select') return nextSeam();
    const by = setting === null ? null : turnOfKey(key);
    if (by === null) return false;
    setting?.turn(by);
    return true;
  };
  const zoom = (by: number) => {
    if (by === 0) looking.whole();
    else looking.zoom(by);
    return true;
  };
  const back = () => {
    hand.takeBack();
    hand.say('The last place is taken back.');
    return true;
  };

  return {
    cursor,
    patch,
    byKey,
    setByKey,
    keyDown: (event: KeyboardEvent) => {
      setByKey(true);
      if (!press(event)) return;
      event.preventDefault();
      event.stopPropagation();
    },
    speak: () =>
      hand.say(
        isOfPlaces(act)
          ? placeWords(drawing, cursor, roleName)
          : patchWords(drawing, patch, middleOf(drawing, patch), roleName),
      ),
  };
}

/** The mark after a place, row by row; after the last comes the first. */
function nextMark(marks: readonly SnapMark[], at: Point, by: 1 | -1): SnapMark | null {
  const order = marks
    .filter(({ kind }) => kind !== 'grid')
    .toSorted((a, b) => (Math.abs(a.place.y - b.place.y) > 1e-6 ? a.place.y - b.place.y : a.place.x - b.place.x));
  const after = order.find(({ place }) => isAfter(place, at));
  const before = order.findLast(({ place }) => isAfter(at, place));
  return (by > 0 ? (after ?? order[0]) : (before ?? order.at(-1))) ?? null;
}

function isAfter(a: Point, b: Point): boolean {
  return a.y > b.y + 1e-6 || (Math.abs(a.y - b.y) <= 1e-6 && a.x > b.x + 1e-6);
}
