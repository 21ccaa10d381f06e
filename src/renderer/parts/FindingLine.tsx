import type { Finding } from '../../shared/measure/finding.ts';
import styles from './FindingLine.module.css';
import { Mark, markWord } from './Mark.tsx';

/** A finding in full: what does not fit, and what would mend it. */
export function FindingLine({ finding }: { readonly finding: Finding }) {
  return (
    <div className={styles.finding} data-level={finding.level}>
      <Mark of={finding.level} />
      <div>
        <span className="heard">{markWord(finding.level)}: </span>
        <p className={styles.what}>{finding.what}</p>
        {finding.mend === undefined ? null : <p className={styles.mend}>{finding.mend}</p>}
      </div>
    </div>
  );
}
