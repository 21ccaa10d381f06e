import type { Drawing } from '../../../shared/drawing/drawing.ts';
import { turnPoint } from '../../../shared/drawing/turn.ts';
import { ALL_WAYS, turnsOf, type Ways, waysFit } from '../../../shared/drawing/ways.ts';
import { Pick } from '../../parts/Pick.tsx';
import styles from './draw.module.css';
import { drawStore, useDrawState } from './drawStore.ts';
import { FINER_WORDS, WAYS_SHORT, WAYS_WORDS } from './waysWords.ts';

/** How every act is repeated over the block, and how fine the grid is that it is drawn on. */
export function Repeating({ drawing }: { readonly drawing: Drawing }) {
  const ways = useDrawState((state) => state.ways);
  const finer = useDrawState((state) => state.finer);
  const { width, height } = drawing;
  const fitting = ALL_WAYS.filter((one) => waysFit(one, width, height));
  return (
    <div className={styles.repeating}>
      <Pick
        label="Repeat"
        value={fitting.includes(ways) ? ways : 'once'}
        options={fitting.map((id) => ({ id, name: WAYS_WORDS[id], says: <WaysSign ways={id} /> }))}
        onChange={(next) => drawStore.setState({ ways: next })}
      />
      <Pick
        label="Marks"
        value={String(finer)}
        options={FINER_WORDS.map(([id, name]) => ({ id: String(id), name }))}
        onChange={(next) => drawStore.setState({ finer: Number(next) })}
      />
    </div>
  );
}

/** One stroke and its images in a small square, and the words. */
function WaysSign({ ways }: { readonly ways: Ways }) {
  const strokes = turnsOf(ways, 20, 20).map((turn) => {
    const [a, b] = [
      { x: 4, y: 2.5 },
      { x: 8, y: 6.5 },
    ].map((place) => turnPoint(place, turn, 20, 20));
    return `M${a?.x} ${a?.y}L${b?.x} ${b?.y}`;
  });
  return (
    <span className={styles.waysSign}>
      <svg viewBox="0 0 20 20" aria-hidden="true" focusable="false">
        <rect x="0.5" y="0.5" width="19" height="19" />
        <path d={strokes.join('')} />
      </svg>
      {WAYS_SHORT[ways]}
    </span>
  );
}
