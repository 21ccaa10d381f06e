import { useState } from 'react';
import { copyPart, type DrawnPart, turnPart } from '../../../shared/drawing/part.ts';
import { afterTurn, type Point, UNTURNED } from '../../../shared/drawing/turn.ts';
import { pastePart } from '../../../shared/pattern/edits/index.ts';
import { useSelection } from '../../state/hooks.tsx';
import { drawStore, useDrawState } from './drawStore.ts';
import { boxAbout } from './picking.ts';
import type { DrawnBlock } from './useDrawn.ts';
import type { Hand } from './useHand.ts';
import type { Setting } from './useMatKeys.ts';

/** A copied part on its way to where it is set in, and how it lies. */
export interface Carried extends Setting {
  readonly part: DrawnPart;
}

export interface Copying {
  readonly carried: Carried | null;
  /** Takes up what is picked, to be set in elsewhere. */
  copy(): void;
  /** Begins to set in what was taken up. */
  paste(at: Point): void;
}

/** Copying a part of a drawing and setting it in, here or in another block. */
export function useSetting(drawn: DrawnBlock, hand: Hand): Copying {
  const copied = useDrawState((state) => state.copied);
  const by = useDrawState((state) => state.setting);
  const [corner, setCorner] = useState<Point>({ x: 0, y: 0 });
  const [selection] = useSelection();
  const part = copied === null || by === null ? null : turnPart(copied, by);

  const copy = () => {
    if (selection.kind !== 'patches') return;
    drawStore.setState({ copied: copyPart(drawn.drawing, boxAbout(drawn.drawing, selection.patches)) });
    hand.say('Taken up. Ctrl V sets it in.');
  };
  const paste = (at: Point) => {
    if (drawStore.getState().copied === null) return hand.say('Nothing is taken up yet. Pick patches, then Ctrl C.');
    setCorner(at);
    drawStore.setState({ setting: UNTURNED });
    hand.say('Move it with the arrows; R turns, M mirrors, Enter sets it in, Escape leaves it.');
  };
  if (part === null || copied === null || by === null) return { carried: null, copy, paste };
  const stop = () => {
    hand.calm();
    drawStore.setState({ setting: null });
  };
  const carried: Carried = {
    part,
    corner,
    at: setCorner,
    set: () => {
      if (hand.attempt(pastePart, { recipe: drawn.recipe.id, part: copied, at: corner, by }, corner)) stop();
    },
    turn: (more) => drawStore.setState({ setting: afterTurn(by, more) }),
    giveUp: stop,
  };
  return { carried, copy, paste };
}
