import { type KeyboardEvent, useId, useState } from 'react';
import { FieldError, Input, Label, Text, TextField } from 'react-aria-components';
import { fractionOf } from '../../shared/measure/fraction.ts';
import { readNumber } from '../../shared/measure/read.ts';
import styles from './fields.module.css';

export interface NumberFieldProps {
  readonly label: string;
  readonly value: number;
  /** Told once the designer has finished typing, with a number that may stand here. */
  readonly onChange: (value: number) => void;
  /** 'inch' shows the inch mark and takes fractions; 'count' takes whole numbers. */
  readonly unit?: 'inch' | 'count' | 'plain';
  readonly least?: number;
  readonly most?: number;
  /** How far the arrow keys go: ⅛ for inches, 1 for counts; with Shift, eight or ten times as far. */
  readonly step?: number;
  readonly help?: string;
  readonly isDisabled?: boolean;
  /** The label is heard, not seen. */
  readonly bare?: boolean;
}

/** What is wrong with a typed number, in words; null when it may stand. */
export function troubleWith(text: string, { unit = 'inch', least, most }: Partial<NumberFieldProps>): string | null {
  const value = readNumber(text);
  if (value === null) return unit === 'inch' ? 'Write inches, such as 8½, 8 1/2 or 8.5.' : 'Write a number.';
  const mark = unit === 'inch' ? '″' : '';
  if (unit === 'count' && !Number.isInteger(value)) return 'Write a whole number.';
  if (least !== undefined && value < least) return `At least ${fractionOf(least)}${mark}.`;
  if (most !== undefined && value > most) return `At most ${fractionOf(most)}${mark}.`;
  return null;
}

/** A number the designer chooses. It takes fractions the way they are written by hand, and never loses what was typed. */
export function NumberField(props: NumberFieldProps) {
  const { label, value, onChange, unit = 'inch', least = 0, most = 400, help, bare = false } = props;
  const step = props.step ?? (unit === 'inch' ? 0.125 : 1);
  const [typed, setTyped] = useState<string | null>(null);
  const markId = useId();
  const trouble = typed === null ? null : troubleWith(typed, { unit, least, most });

  const finish = () => {
    if (typed === null || trouble !== null) return;
    const next = readNumber(typed);
    setTyped(null);
    if (next !== null && next !== value) onChange(next);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter') finish();
    else if (event.key === 'Escape' && typed !== null) setTyped(null);
    else if (event.key === 'ArrowUp' || event.key === 'ArrowDown') {
      event.preventDefault();
      const far = (event.shiftKey ? (unit === 'inch' ? 8 : 10) : 1) * (event.key === 'ArrowUp' ? step : -step);
      const next = Math.min(most, Math.max(least, ((typed === null ? null : readNumber(typed)) ?? value) + far));
      setTyped(null);
      if (next !== value) onChange(next);
    } else return;
    event.stopPropagation();
  };

  return (
    <TextField
      className={`${styles.field} ${styles.number}`}
      value={typed ?? fractionOf(value)}
      onChange={setTyped}
      onBlur={finish}
      isInvalid={trouble !== null}
      isDisabled={props.isDisabled ?? false}
      {...(bare ? { 'aria-label': label } : {})}
    >
      {bare ? null : <Label>{label}</Label>}
      <span className={styles.typed}>
        <Input
          data-settled={typed === null || undefined}
          onKeyDown={onKeyDown}
          inputMode="text"
          autoComplete="off"
          spellCheck={false}
          onFocus={(event) => event.target.select()}
        />
        {unit === 'inch' ? (
          <span id={markId} className={styles.mark} aria-hidden="true">
            ″
          </span>
        ) : null}
      </span>
      {help === undefined ? null : (
        <Text slot="description" className={styles.help}>
          {help}
        </Text>
      )}
      <FieldError className={styles.trouble ?? ''}>{trouble}</FieldError>
    </TextField>
  );
}
