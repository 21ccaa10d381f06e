import { Button } from '../../parts/Button.tsx';
import styles from '../cloth.module.css';

interface UseThisProps {
  /** What it is, after "Use": heard, since the word on the button is the same for all. */
  readonly what: string;
  readonly chosen: boolean;
  readonly onUse: () => void;
}

/** Makes one of several ways the pattern's own; the one that is, says so. */
export function UseThis({ what, chosen, onUse }: UseThisProps) {
  if (chosen) return <p className={styles.printed}>The pattern prints this one</p>;
  return (
    <Button small aria-label={`Use this: ${what}`} onPress={onUse}>
      Use this
    </Button>
  );
}
