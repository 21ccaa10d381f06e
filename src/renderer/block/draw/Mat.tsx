import { type CSSProperties, useId, useRef } from 'react';
import type { Finding } from '../../../shared/measure/finding.ts';
import type { Piecing } from '../../../shared/piecing/piecing.ts';
import { useRoom } from '../../parts/useRoom.ts';
import { useSelection } from '../../state/hooks.tsx';
import { ACTS, type Act, isOfPlaces } from './acts.ts';
import { Carrying } from './Carrying.tsx';
import { Chosen, FindingPlaces } from './Chosen.tsx';
import { Cloth } from './Cloth.tsx';
import styles from './draw.module.css';
import { useDrawState } from './drawStore.ts';
import { GridMarks } from './GridMarks.tsx';
import { Here } from './Here.tsx';
import { MatFoot } from './MatFoot.tsx';
import { useMarks } from './marks.ts';
import { Pending } from './Pending.tsx';
import { Ruler, RulerPointer } from './Ruler.tsx';
import { TroubleNote } from './TroubleNote.tsx';
import type { DrawnBlock } from './useDrawn.ts';
import { useHand } from './useHand.ts';
import { useMatKeys } from './useMatKeys.ts';
import { usePointer } from './usePointer.ts';
import { useSetting } from './useSetting.ts';
import { useSight } from './useSight.ts';
import { useWheel } from './useWheel.ts';

interface MatProps {
  readonly drawn: DrawnBlock;
  readonly piecing: Piecing | undefined;
  readonly findings: readonly Finding[];
}

/** The drawing on its mat: everything the hand does to it, by pointer and by keys. */
export function Mat({ drawn, piecing, findings }: MatProps) {
  const { drawing, block, colourOf, roleName } = drawn;
  const host = useRef<HTMLDivElement>(null);
  const room = useRoom(host);
  const looking = useSight(room, drawing, drawn.recipe.id);
  const act = useDrawState((state) => state.act);
  const finer = useDrawState((state) => state.finer);
  const ways = useDrawState((state) => state.ways);
  const [selection] = useSelection();
  const hand = useHand(drawn);
  const marks = useMarks(drawing, act, hand.places);
  const { carried, copy, paste } = useSetting(drawn, hand);
  const pointer = usePointer({ act, block, drawing, marks, hand, looking, setting: carried });
  const needs = { act, block, drawing, roleName, finer, marks, hand, looking, setting: carried, copy, paste };
  const keys = useMatKeys(needs);
  useWheel(host, looking);
  const help = useId();

  const { sight } = looking;
  const ofPlaces = isOfPlaces(act);
  const mark = keys.byKey ? null : (pointer.over?.mark ?? null);
  const at = keys.byKey ? keys.cursor : (mark?.place ?? null);
  const patch = keys.byKey ? keys.patch : (pointer.over?.patch ?? null);
  const inGrid = `translate(${sight.x} ${sight.y}) scale(${sight.scale})`;
  const shown = room.width > 0;
  return (
    <div className={styles.matPlace}>
      <div
        ref={host}
        className={styles.mat}
        role="application"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the drawing is worked on with keys
        tabIndex={0}
        aria-label={`Drawing of block ${block}`}
        aria-describedby={help}
        data-act={act}
        data-keys={keys.byKey || undefined}
        style={{ '--scale': sight.scale } as CSSProperties}
        onKeyDown={keys.keyDown}
        onFocus={keys.speak}
        onBlur={() => keys.setByKey(false)}
        onPointerDownCapture={() => keys.setByKey(false)}
        {...pointer.handlers}
        onPointerMove={(event) => {
          if (event.movementX !== 0 || event.movementY !== 0) keys.setByKey(false);
          pointer.handlers.onPointerMove(event);
        }}
      >
        {shown ? (
          <svg className={styles.sheet} width={room.width} height={room.height} aria-hidden="true" focusable="false">
            <g transform={inGrid}>
              <Cloth drawing={drawing} colourOf={colourOf} piecing={piecing} />
              <Chosen drawing={drawing} piecing={piecing} selection={selection} />
              <FindingPlaces findings={findings} air={5 / sight.scale} />
            </g>
            {ofPlaces || carried !== null ? <GridMarks marks={marks} sight={sight} finer={finer} /> : null}
            <Pending act={act} drawing={drawing} sight={sight} ways={ways} places={hand.places} at={at} />
            <Ruler room={room} sight={sight} width={drawing.width} height={drawing.height} />
            {at !== null && ofPlaces ? <RulerPointer sight={sight} at={at} /> : null}
            {carried === null ? (
              <Here
                act={act}
                drawing={drawing}
                sight={sight}
                mark={mark}
                cursor={keys.byKey ? keys.cursor : null}
                patch={patch}
                picked={selection.kind === 'patches' ? selection.patches : []}
                first={hand.places[0] ?? null}
                box={pointer.box}
              />
            ) : (
              <Carrying carried={carried} colourOf={colourOf} sight={sight} />
            )}
          </svg>
        ) : null}
        <p id={help} className="heard">
          {howByKeys(act)}
        </p>
      </div>
      <TroubleNote hand={hand} sight={sight} room={room} />
      <p className="heard" aria-live="polite">
        {hand.said}
      </p>
      <MatFoot looking={looking} drawn={drawn} at={at} mark={mark} patch={patch} places={hand.places.length} />
    </div>
  );
}

function howByKeys(act: Act): string {
  const { word, how } = ACTS.find(({ id }) => id === act) ?? (ACTS[0] as (typeof ACTS)[number]);
  const where = isOfPlaces(act)
    ? 'Arrow keys move over the grid, Shift by whole squares; full stop and comma go from mark to mark.'
    : 'Arrow keys go from patch to patch; full stop and comma go through all of them.';
  return `${word}. ${how} ${where} Enter chooses, Escape gives up. Plus, minus and zero look nearer, farther, at the whole.`;
}
