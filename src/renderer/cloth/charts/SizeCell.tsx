import type { ReactNode } from 'react';
import type { WorkedSize } from '../../../shared/workroom/workedOut.ts';
import { useCurrentSize } from '../../state/hooks.tsx';
import styles from '../cloth.module.css';

/** A cell in the column of one size; the size looked at stands out. */
export function SizeCell({ size, children }: { readonly size: WorkedSize; readonly children: ReactNode }) {
  const current = useCurrentSize();
  return (
    <td className={styles.sizeCell} data-now={size.size.id === current?.size.id}>
      {children}
    </td>
  );
}
