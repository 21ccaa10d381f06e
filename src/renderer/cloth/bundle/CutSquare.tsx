import type { AllottedStrip } from '../../../shared/cloth/bundle/allotment.ts';
import type { LaidGroup } from '../../../shared/cloth/bundle/squareLaid.ts';
import { setUnder } from '../clothStore.ts';
import styles from './bundle.module.css';

interface CutSquareProps {
  /** Left out for a square that nothing is cut from. */
  readonly square: AllottedStrip | undefined;
  /** Inches of a side. */
  readonly side: number;
  readonly colourOf: (fabric: string) => string | undefined;
}

/** One square to scale, and where its pieces lie on it. */
export function CutSquare({ square, side, colourOf }: CutSquareProps) {
  if (square === undefined) return <span className={styles.square} data-whole />;
  const { laid = [], groups } = square;
  return (
    <span className={styles.square} role="img" aria-label={groups.map(groupWords).join(', ')}>
      {laid.map(({ group, x, y, width, height }) => (
        <span
          key={group.id}
          className={styles.onSquare}
          style={{
            ...{ left: share(x, side), top: share(y, side), width: share(width, side), height: share(height, side) },
            background: colourOf(group.fabric),
          }}
          onPointerEnter={() => setUnder(group.cuts.map(({ letter }) => letter))}
          onPointerLeave={() => setUnder(null)}
        >
          <span className={styles.chip}>{groupWords(group)}</span>
        </span>
      ))}
    </span>
  );
}

function share(inches: number, side: number): string {
  return `${(100 * inches) / side}%`;
}

/** "A", "2 A, 1 B". */
function groupWords({ cuts }: LaidGroup['group']): string {
  const [only] = cuts;
  if (cuts.length === 1 && only !== undefined && many(only.count) === 1) return only.letter;
  return cuts.map(({ letter, count }) => `${many(count)} ${letter}`).join(', ');
}

function many(count: number): number {
  return Math.ceil(count - 1e-9);
}
