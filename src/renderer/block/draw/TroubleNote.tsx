import { useLayoutEffect, useRef, useState } from 'react';
import { Mark } from '../../parts/Mark.tsx';
import type { Room } from '../../parts/useRoom.ts';
import styles from './draw.module.css';
import { type Sight, toScreen } from './sight.ts';
import type { Hand } from './useHand.ts';

interface TroubleNoteProps {
  readonly hand: Hand;
  readonly sight: Sight;
  readonly room: Room;
}

/** Why something cannot be drawn, told at the place where it was tried. The drawing is as it was. */
export function TroubleNote({ hand: { trouble }, sight, room }: TroubleNoteProps) {
  const note = useRef<HTMLDivElement>(null);
  const [size, setSize] = useState({ width: 0, height: 0 });
  // biome-ignore lint/correctness/useExhaustiveDependencies: other words take other room
  useLayoutEffect(() => {
    const box = note.current?.getBoundingClientRect();
    if (box !== undefined) setSize({ width: box.width, height: box.height });
  }, [trouble]);
  const spot = trouble === null ? null : toScreen(sight, trouble.at);
  const held = (at: number, length: number, most: number) => Math.max(4, Math.min(most - length - 4, at));
  const below = spot !== null && spot.y + 16 + size.height < room.height;
  const style =
    spot === null
      ? undefined
      : {
          left: held(spot.x - size.width / 2, size.width, room.width),
          top: held(below ? spot.y + 16 : spot.y - 16 - size.height, size.height, room.height),
        };
  return (
    <div role="alert" className={styles.troublePlace}>
      {trouble === null ? null : (
        <>
          <svg className={styles.troubleSpot} width={room.width} height={room.height} aria-hidden="true">
            <circle cx={spot?.x} cy={spot?.y} r={10} />
            <circle cx={spot?.x} cy={spot?.y} r={10} />
          </svg>
          <div ref={note} className={styles.trouble} style={style}>
            <Mark of="stops" />
            <div>
              {trouble.findings.map(({ what, mend }) => (
                <p key={what}>
                  {what}
                  {mend === undefined ? null : <span className={styles.mend}> {mend}</span>}
                </p>
              ))}
            </div>
          </div>
        </>
      )}
    </div>
  );
}
