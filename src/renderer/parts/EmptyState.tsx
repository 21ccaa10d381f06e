import type { ReactNode } from 'react';
import styles from './EmptyState.module.css';

export interface EmptyStateProps {
  readonly title: string;
  /** What will be here. */
  readonly children: ReactNode;
  /** The one act that starts it. */
  readonly act?: ReactNode;
  readonly picture?: ReactNode;
}

/** What is seen where nothing is yet: what will be there, and the one act that starts it. */
export function EmptyState({ title, children, act, picture }: EmptyStateProps) {
  return (
    <section className={styles.empty}>
      {picture === undefined ? null : <div className={styles.picture}>{picture}</div>}
      <h2>{title}</h2>
      <div className={styles.words}>{children}</div>
      {act === undefined ? null : <div className={styles.act}>{act}</div>}
    </section>
  );
}
