import type { ReactNode } from 'react';
import { Label, Radio, RadioGroup } from 'react-aria-components';
import styles from './Choice.module.css';

export interface ChoiceProps<Id extends string> {
  readonly label: string;
  readonly options: readonly {
    readonly id: Id;
    readonly says: ReactNode;
    readonly more?: string;
    readonly isDisabled?: boolean;
  }[];
  readonly value: Id;
  readonly onChange: (id: Id) => void;
  /** 'row' for two to four short words, 'list' for longer ones. */
  readonly lie?: 'row' | 'list';
  /** The label is heard, not seen. */
  readonly bare?: boolean;
}

/** One of a few. */
export function Choice<Id extends string>({
  label,
  options,
  value,
  onChange,
  lie = 'row',
  bare = false,
}: ChoiceProps<Id>) {
  return (
    <RadioGroup
      className={styles.choice ?? ''}
      data-lie={lie}
      value={value}
      onChange={(id) => onChange(id as Id)}
      orientation={lie === 'row' ? 'horizontal' : 'vertical'}
      {...(bare ? { 'aria-label': label } : {})}
    >
      {bare ? null : <Label>{label}</Label>}
      <div className={styles.options}>
        {options.map(({ id, says, more, isDisabled = false }) => (
          <Radio key={id} value={id} className={styles.option ?? ''} isDisabled={isDisabled}>
            <span className={styles.says}>{says}</span>
            {more === undefined ? null : <span className={styles.more}>{more}</span>}
          </Radio>
        ))}
      </div>
    </RadioGroup>
  );
}
