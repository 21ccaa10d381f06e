import { Button } from 'react-aria-components';
import type { PieceLine } from '../../../shared/cloth/cloth.ts';
import { useRuler, useSelection } from '../../state/hooks.tsx';
import { setUnder } from '../clothStore.ts';
import { cutText } from '../cutText.ts';
import { lineKey } from '../pieceRows.ts';
import styles from './cutting.module.css';
import { useLit } from './useLit.ts';

/** The pieces of one fabric by letter: each can be pointed at or walked to, and shows where it goes. */
export function PieceKeys({ lines, label }: { readonly lines: readonly PieceLine[]; readonly label: string }) {
  const ruler = useRuler();
  const [, select] = useSelection();
  const lit = useLit();
  return (
    <ul className={styles.keys} aria-label={label}>
      {lines.map((line) => (
        <li key={lineKey(line)}>
          <Button
            className={styles.key ?? ''}
            data-lit={lit.has(line.letter) || undefined}
            onHoverChange={(over) => setUnder(over ? [line.letter] : null)}
            onFocusChange={(on) => setUnder(on ? [line.letter] : null)}
            onPress={() => select({ kind: 'piece', letter: line.letter })}
          >
            <span className="heard">Piece </span>
            <b>{line.letter}</b> {cutText(line, ruler)} <span className={styles.times}>× {line.count.value}</span>
          </Button>
        </li>
      ))}
    </ul>
  );
}
