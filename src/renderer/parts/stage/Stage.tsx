import { type ReactNode, useRef } from 'react';
import type { Figure as FigureData, Ink } from '../../../shared/diagrams/figure.ts';
import type { Manner } from '../../../shared/diagrams/fill.ts';
import { MARGIN } from '../../../shared/diagrams/sheet.ts';
import { Figure } from '../figure/Figure.tsx';
import { PIXELS_PER_POINT } from '../figure/penOnScreen.ts';
import { useRoom } from '../useRoom.ts';
import styles from './stage.module.css';
import { type Sight, useZoom } from './useZoom.ts';

interface StageProps {
  readonly figure: FigureData;
  readonly inks: readonly Ink[];
  readonly manner?: Manner;
  /** Lies exactly over the figure, corner on corner. */
  readonly children?: ReactNode;
}

const RIM = MARGIN * PIXELS_PER_POINT;

function fitting(figure: FigureData, room: { readonly width: number; readonly height: number }): number {
  return Math.min((room.width - 2 * RIM) / figure.width, (room.height - 2 * RIM) / figure.height);
}

/** A figure as large as its place, with something lying exactly over it. */
export function Stage(props: StageProps) {
  const host = useRef<HTMLDivElement>(null);
  const room = useRoom(host);
  return (
    <div ref={host} className={styles.stage}>
      <Drawn {...props} scale={fitting(props.figure, room)} />
    </div>
  );
}

interface ZoomStageProps extends StageProps {
  readonly sight: Sight;
  readonly onSight: (sight: Sight) => void;
}

/** A stage that can be looked at closely: zoomed and moved by the wheel. */
export function ZoomStage({ sight, onSight, ...props }: ZoomStageProps) {
  const host = useRef<HTMLDivElement>(null);
  const room = useRoom(host);
  const { drawnAt, handlers } = useZoom(host, sight, onSight);
  const stretch = sight.zoom / drawnAt;
  const moved =
    sight.zoom === 1 && drawnAt === 1 ? {} : { transform: transformOf(sight, stretch), willChange: 'transform' };
  return (
    <div ref={host} className={styles.stage} data-zoomed={sight.zoom > 1 || undefined} {...handlers}>
      <Drawn {...props} scale={fitting(props.figure, room) * drawnAt} style={moved} />
    </div>
  );
}

function transformOf({ x, y }: Sight, stretch: number): string {
  return `translate(${x}px, ${y}px) scale(${stretch})`;
}

interface DrawnProps extends StageProps {
  /** Pixels for an inch. */
  readonly scale: number;
  readonly style?: React.CSSProperties;
}

function Drawn({ figure, inks, manner = 'colour', children, scale, style = {} }: DrawnProps) {
  if (scale <= 0) return null;
  const size = { width: figure.width * scale + 2 * RIM, height: figure.height * scale + 2 * RIM };
  return (
    <div className={styles.figure} style={{ ...size, ...style }}>
      <Figure figure={figure} inks={inks} manner={manner} fit={scale} />
      <div className={styles.over} style={{ inset: RIM }}>
        {children}
      </div>
    </div>
  );
}
