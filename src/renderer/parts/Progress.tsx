import { Label, ProgressBar } from 'react-aria-components';
import styles from './Progress.module.css';

interface ProgressProps {
  /** What is being done. */
  readonly doing: string;
  /** How far, 0 to 1. */
  readonly progress: number;
}

/** How far something is that takes a while: sewing goes along a drawn line, under the words of what is being done. */
export function Progress({ doing, progress }: ProgressProps) {
  return (
    <ProgressBar className={styles.going ?? ''} value={progress} minValue={0} maxValue={1}>
      <Label>{doing}</Label>
      <span className={styles.track}>
        <span className={styles.done} style={{ width: `${100 * progress}%` }} />
      </span>
    </ProgressBar>
  );
}
