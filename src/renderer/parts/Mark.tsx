import type { Level } from '../../shared/measure/finding.ts';
import styles from './Mark.module.css';

export type MarkOf = Level | 'fits';

const WORD: Readonly<Record<MarkOf, string>> = {
  fits: 'Fits',
  note: 'Worth knowing',
  look: 'Look again',
  stops: 'Does not fit',
};

/** The word for a state, for where it is said aloud or printed beside its mark. */
export function markWord(of: MarkOf): string {
  return WORD[of];
}

/**
 * Two patches at a seam: flush when things fit, slipped when they do not, one left open when they want another look.
 * The mark never stands without words.
 */
export function Mark({ of }: { readonly of: MarkOf }) {
  const slip = of === 'stops' ? 2.5 : 0;
  const open = of === 'look' || of === 'note';
  return (
    <svg className={styles.mark} data-of={of} viewBox="0 0 16 16" focusable="false" aria-hidden="true">
      <rect className={styles.whole} x="1.5" y={3.5 - slip} width="5.5" height="9" />
      <rect className={open ? styles.open : styles.whole} x="9" y={3.5 + slip} width="5.5" height="9" />
    </svg>
  );
}
