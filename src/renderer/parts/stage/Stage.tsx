import { type ReactNode, useRef } from 'react';
import type { Figure as FigureData, Ink } from '../../../shared/diagrams/figure.ts';
import type { Manner } from '../../../shared/diagrams/fill.ts';
import { MARGIN } from '../../../shared/diagrams/sheet.ts';
import { Figure } from '../figure/Figure.tsx';
import { PIXELS_PER_POINT } from '../figure/penOnScreen.ts';
import { useRoom } from '../useRoom.ts';
import styles from './stage.module.css';

interface StageProps {
  readonly figure: FigureData;
  readonly inks: readonly Ink[];
  readonly manner?: Manner;
  /** Lies exactly over the figure, corner on corner. */
  readonly children?: ReactNode;
}

const RIM = MARGIN * PIXELS_PER_POINT;

/** A figure as large as its place, with something lying exactly over it. */
export function Stage({ figure, inks, manner = 'colour', children }: StageProps) {
  const host = useRef<HTMLDivElement>(null);
  const room = useRoom(host);
  const scale = Math.min((room.width - 2 * RIM) / figure.width, (room.height - 2 * RIM) / figure.height);
  const size = { width: figure.width * scale, height: figure.height * scale };
  return (
    <div ref={host} className={styles.stage}>
      {scale > 0 && (
        <div className={styles.figure} style={{ width: size.width + 2 * RIM, height: size.height + 2 * RIM }}>
          <Figure figure={figure} inks={inks} manner={manner} fit={scale} />
          <div className={styles.over} style={{ inset: RIM }}>
            {children}
          </div>
        </div>
      )}
    </div>
  );
}
