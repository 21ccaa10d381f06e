import { Button, Input, SearchField } from 'react-aria-components';
import styles from './Search.module.css';

export interface SearchProps {
  /** What is looked for: heard as the label, seen as the hint. */
  readonly label: string;
  readonly value?: string;
  readonly onChange?: (words: string) => void;
  readonly autoFocus?: boolean;
}

/** Words to look for, found as they are typed. Escape or the cross empties it. */
export function Search({ label, value, onChange, autoFocus = false }: SearchProps) {
  const held = { ...(value === undefined ? {} : { value }), ...(onChange === undefined ? {} : { onChange }) };
  return (
    <SearchField className={styles.search ?? ''} aria-label={label} autoFocus={autoFocus} {...held}>
      <Input placeholder={label} />
      <Button className={styles.clear ?? ''} aria-label="Empty the search">
        ×
      </Button>
    </SearchField>
  );
}
