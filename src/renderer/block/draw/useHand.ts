import { useCallback, useEffect, useRef, useState } from 'react';
import { isOnEdge } from '../../../shared/drawing/meet.ts';
import { patchAt } from '../../../shared/drawing/split.ts';
import type { Point } from '../../../shared/drawing/turn.ts';
import { vertexAt } from '../../../shared/drawing/vertex.ts';
import { type Ways, waysFit } from '../../../shared/drawing/ways.ts';
import type { Finding } from '../../../shared/measure/finding.ts';
import type { DrawingEdit } from '../../../shared/pattern/edits/drawn.ts';
import {
  cutPatch,
  floodPatchRole,
  mergePatches,
  moveVertex,
  setPatchRole,
} from '../../../shared/pattern/edits/index.ts';
import { useStudio } from '../../state/hooks.tsx';
import { type DrawState, drawStore, useDrawState } from './drawStore.ts';
import { type Deed, type Ground, press } from './hand.ts';
import type { DrawnBlock } from './useDrawn.ts';

/** Why an act was not done, and where that is told. */
interface Trouble {
  readonly at: Point;
  readonly findings: readonly Pick<Finding, 'what' | 'mend'>[];
}

/** What the hand has begun, and what it can do. */
export interface Hand {
  readonly places: readonly Point[];
  readonly trouble: Trouble | null;
  /** The last thing worth saying aloud. */
  readonly said: string;
  /** Gives a place to the act in hand: acts that need more wait for them. */
  give(place: Point, stroke?: string): void;
  /** Does an act of the pattern, or tells at a place why not. */
  attempt<Args>(edit: DrawingEdit<Args>, args: Args, at: Point, mark?: string): boolean;
  /** Lets go of what was begun; answers whether there was anything. */
  giveUp(): boolean;
  takeBack(): void;
  /** Lets a refusal go that has been read. */
  calm(): void;
  say(words: string): void;
}

export function useHand(drawn: DrawnBlock): Hand {
  const studio = useStudio();
  const act = useDrawState((state) => state.act);
  const [places, setPlaces] = useState<readonly Point[]>([]);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const [said, say] = useState('');
  const now = useRef({ drawn, places });
  now.current = { drawn, places };

  // Another act, another block, another grid or an undo: what was begun on the old one is no longer meant.
  const { drawing } = drawn;
  // biome-ignore lint/correctness/useExhaustiveDependencies: these are what it belongs to
  useEffect(() => setPlaces([]), [act, drawing]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: as above
  useEffect(() => setTrouble(null), [act, drawn.recipe.id]);

  const attempt: Hand['attempt'] = useCallback(
    (edit, args, at, mark) => {
      const pattern = studio.store.getState().history?.now;
      if (pattern === undefined) return false;
      const after = edit.maybe(pattern, args);
      if (!after.ok) {
        setTrouble({ at: placeOf(after.findings[0]) ?? at, findings: after.findings.slice(0, 2) });
        return false;
      }
      setTrouble(null);
      if (after.value === pattern) return true;
      say(edit.name(args, pattern));
      studio.act(edit, args, mark);
      return true;
    },
    [studio],
  );

  const give = (place: Point, stroke?: string) => {
    const { drawn: block } = now.current;
    const { act: doing, brush, ways: wanted } = drawStore.getState();
    const ways = waysFit(wanted, block.drawing.width, block.drawing.height) ? wanted : 'once';
    const recipe = block.recipe.id;
    const role = brushOf(block, brush);
    if (doing === 'fill') attempt(setPatchRole, { recipe, places: [place], role, ways }, place, stroke);
    else if (doing === 'flood') attempt(floodPatchRole, { recipe, place, role, ways }, place);
    else {
      const pressed = press(doing, now.current.places, place, groundOf(block));
      const { deed } = pressed;
      if (pressed.trouble !== undefined) setTrouble({ at: place, findings: [{ what: pressed.trouble }] });
      else if (deed === undefined) setTrouble(null);
      if (pressed.said !== undefined) say(pressed.said);
      const done = deed !== undefined && doDeed(attempt, recipe, deed, ways, place);
      setPlaces(done ? [] : pressed.places);
      now.current.places = done ? [] : pressed.places;
    }
  };

  const giveUp = () => {
    const had = now.current.places.length > 0 || trouble !== null;
    setPlaces([]);
    now.current.places = [];
    setTrouble(null);
    return had;
  };
  const takeBack = () => setPlaces((before) => before.slice(0, -1));
  const calm = () => setTrouble(null);
  return { places, trouble, said, give, attempt, giveUp, takeBack, calm, say };
}

/** The role the brush fills with; the first of the recipe where the brush is of another. */
export function brushOf({ recipe }: Pick<DrawnBlock, 'recipe'>, brush: DrawState['brush']): string {
  return (recipe.roles.find(({ id }) => id === brush) ?? recipe.roles[0])?.id ?? '';
}

function groundOf({ drawing }: DrawnBlock): Ground {
  return {
    isOnEdge: (place) => isOnEdge(drawing, place),
    isCorner: (place) => vertexAt(drawing, place) !== null,
    isSamePatch: (a, b) => patchAt(drawing, a) === patchAt(drawing, b),
  };
}

function doDeed(attempt: Hand['attempt'], recipe: string, deed: Deed, ways: Ways, at: Point): boolean {
  if (deed.kind === 'join') return attempt(mergePatches, { recipe, places: deed.places, ways }, at);
  if (deed.kind === 'move') return attempt(moveVertex, { recipe, from: deed.from, to: deed.to, ways }, at);
  const { places, centre } = deed;
  return attempt(cutPatch, { recipe, places, ways, ...(centre === undefined ? {} : { centre }) }, at);
}

function placeOf(finding: Finding | undefined): Point | null {
  const box = finding?.where.box;
  return box === undefined ? null : { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}
