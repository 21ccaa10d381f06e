import type { ReactNode } from 'react';
import styles from './BackTo.module.css';
import { Button } from './Button.tsx';

/** From one thing in the side panel back to what it is part of. */
export function BackTo({ onPress, children }: { readonly onPress: () => void; readonly children: ReactNode }) {
  return (
    <Button tone="bare" small className={styles.back ?? ''} onPress={onPress}>
      <svg className={styles.arrow} viewBox="0 0 12 10" aria-hidden="true" focusable="false">
        <path d="M5 1 1 5l4 4M1 5h10" />
      </svg>
      <span>{children}</span>
    </Button>
  );
}
