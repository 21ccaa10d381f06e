import type { ReactNode } from 'react';
import { Button, Label, ListBox, ListBoxItem, Popover, Select, SelectValue } from 'react-aria-components';
import styles from './Pick.module.css';

interface PickOption<Id extends string> {
  readonly id: Id;
  /** Read aloud, and found by typing. */
  readonly name: string;
  /** How it is shown, when a name alone is not enough. */
  readonly says?: ReactNode;
}

export interface PickProps<Id extends string> {
  readonly label: string;
  readonly value: Id;
  readonly options: readonly PickOption<Id>[];
  readonly onChange: (id: Id) => void;
  /** The label is heard, not seen. */
  readonly bare?: boolean;
}

/** One of many, from a list that opens. */
export function Pick<Id extends string>({ label, value, options, onChange, bare = false }: PickProps<Id>) {
  return (
    <Select
      className={styles.pick ?? ''}
      value={value}
      onChange={(id) => {
        if (id !== null && id !== value) onChange(id as Id);
      }}
      {...(bare ? { 'aria-label': label } : {})}
    >
      {bare ? null : <Label>{label}</Label>}
      <Button className={styles.button ?? ''}>
        <SelectValue className={styles.value ?? ''} />
        <svg className={styles.arrow} viewBox="0 0 10 6" aria-hidden="true" focusable="false">
          <path d="M1 1l4 4 4-4" />
        </svg>
      </Button>
      <Popover className={styles.popover ?? ''} offset={4}>
        <ListBox className={styles.list ?? ''}>
          {options.map(({ id, name, says }) => (
            <ListBoxItem key={id} id={id} textValue={name} className={styles.option ?? ''}>
              {says ?? name}
            </ListBoxItem>
          ))}
        </ListBox>
      </Popover>
    </Select>
  );
}
