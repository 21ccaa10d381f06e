import { memo } from 'react';
import styles from './draw.module.css';
import { type Sight, toScreen } from './sight.ts';
import type { SnapMark } from './snap.ts';

interface GridMarksProps {
  readonly marks: readonly SnapMark[];
  readonly sight: Sight;
  readonly finer: number;
}

/** Marks nearer than this on screen would be a fog, pixels. */
const CLOSEST = 8;
/** On a grid finer than this on screen all pins are small, pixels. */
const CROWDED = 28;

/** The places the hand is drawn to, as pin heads: large on the grid, small between its lines. In pixels. */
export const GridMarks = memo(function GridMarks({ marks, sight, finer }: GridMarksProps) {
  const shown = marks.filter(({ kind }) => kind !== 'middle' && kind !== 'square' && kind !== 'slant');
  const whole = (value: number) => Math.abs(value - Math.round(value)) < 1e-6;
  const isMain = ({ place }: SnapMark) => whole(place.x) && whole(place.y);
  const main = sight.scale >= CLOSEST ? shown.filter(isMain) : [];
  const fine = sight.scale / finer >= CLOSEST ? shown.filter((mark) => !isMain(mark)) : shown.filter(isOffGrid);
  const size = sight.scale < CROWDED ? 'fine' : 'main';
  return (
    <g>
      <path className={styles.pinRim} data-size="fine" d={dots(fine, sight)} />
      <path className={styles.pin} data-size="fine" d={dots(fine, sight)} />
      <path className={styles.pinRim} data-size={size} d={dots(main, sight)} />
      <path className={styles.pin} data-size={size} d={dots(main, sight)} />
    </g>
  );
});

function isOffGrid({ kind }: SnapMark): boolean {
  return kind === 'star' || kind === 'circle' || kind === 'corner';
}

function dots(marks: readonly SnapMark[], sight: Sight): string {
  return marks
    .map(({ place }) => {
      const { x, y } = toScreen(sight, place);
      return `M${x.toFixed(1)} ${y.toFixed(1)}h0`;
    })
    .join('');
}
