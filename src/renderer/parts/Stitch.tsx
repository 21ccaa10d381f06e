import styles from './Stitch.module.css';

export interface StitchProps {
  /** What the thread says; 'bare' is the line before it is sewn. */
  readonly tone?: 'thread' | 'bare' | 'fits' | 'look' | 'stops';
}

/** A running stitch across the width it is given. The only dashes on screen are stitches. */
export function Stitch({ tone = 'thread' }: StitchProps) {
  return (
    <svg className={styles.stitch} data-tone={tone} aria-hidden="true" focusable="false" preserveAspectRatio="none">
      <line x1="2" y1="2" x2="100%" y2="2" />
    </svg>
  );
}
