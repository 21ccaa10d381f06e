import type { ReactNode } from 'react';
import { Button, Group } from 'react-aria-components';
import styles from './Rows.module.css';

export interface RowOf {
  readonly id: string;
  readonly name: string;
  readonly lead?: ReactNode;
  /** A smaller line below the name. */
  readonly more?: string;
  /** At the far end, mostly a measure. */
  readonly end?: string;
  readonly onPress: () => void;
}

/** Things of one kind, one a line; a press goes to the thing itself. */
export function Rows({ label, rows }: { readonly label: string; readonly rows: readonly RowOf[] }) {
  return (
    <Group className={styles.rows ?? ''} aria-label={label}>
      {rows.map(({ id, name, lead, more, end, onPress }) => (
        <Button key={id} className={styles.row ?? ''} onPress={onPress}>
          {lead === undefined ? null : <span className={styles.lead}>{lead}</span>}
          <span className={styles.words}>
            <span className={styles.name}>{name}</span>
            {more === undefined ? null : <span className={styles.more}>{more}</span>}
          </span>
          <span className={styles.end}>{end}</span>
        </Button>
      ))}
    </Group>
  );
}
