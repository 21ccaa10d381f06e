import type { Turn } from '../../../shared/drawing/turn.ts';
import { Button } from '../Button.tsx';
import styles from './turning.module.css';

/** Turn, turn back, mirror: each with the key that does it. */
export function TurnActs({ onTurn }: { readonly onTurn: (by: Turn) => void }) {
  return (
    <div className={styles.acts}>
      <Button onPress={() => onTurn({ quarters: 1, mirrored: false })}>
        Turn a quarter <kbd>R</kbd>
      </Button>
      <Button onPress={() => onTurn({ quarters: 3, mirrored: false })}>
        Turn back <kbd>Shift R</kbd>
      </Button>
      <Button onPress={() => onTurn({ quarters: 0, mirrored: true })}>
        Mirror <kbd>M</kbd>
      </Button>
    </div>
  );
}
