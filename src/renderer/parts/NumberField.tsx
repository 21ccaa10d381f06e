import { type KeyboardEvent, useId, useState } from 'react';
import { FieldError, Input, Label, Text, TextField } from 'react-aria-components';
import { fractionOf } from '../../shared/measure/fraction.ts';
import { longer } from '../../shared/measure/inches.ts';
import { readNumber } from '../../shared/measure/read.ts';
import { INCH_RULER, type Ruler } from '../../shared/measure/ruler.ts';
import { useRuler } from '../state/hooks.tsx';
import styles from './fields.module.css';

export interface NumberFieldProps {
  readonly label: string;
  readonly value: number;
  /** Told once the designer has finished typing, with a number that may stand here. */
  readonly onChange: (value: number) => void;
  /** A length is inches, shown and typed as the house's ruler has them; 'count' takes whole numbers; 'plain' any. */
  readonly unit?: 'length' | 'count' | 'plain';
  readonly least?: number;
  readonly most?: number;
  /** How far the arrow keys go: ⅛ inch, or 1; with Shift, eight or ten times as far. A metric ruler goes by round marks. */
  readonly step?: number;
  readonly help?: string;
  readonly isDisabled?: boolean;
  /** The label is heard, not seen. */
  readonly bare?: boolean;
}

/** What is wrong with a typed number, in words; null when it may stand. */
export function troubleWith(
  text: string,
  { unit = 'length', least, most }: Partial<NumberFieldProps>,
  ruler: Ruler = INCH_RULER,
): string | null {
  const length = unit === 'length';
  const value = length ? ruler.read(text) : readNumber(text);
  if (value === null) return length ? HOW[ruler.units] : 'Write a number.';
  const say = length ? ruler.length : fractionOf;
  if (unit === 'count' && !Number.isInteger(value)) return 'Write a whole number.';
  if (least !== undefined && longer(least, value)) return `At least ${say(least)}.`;
  if (most !== undefined && longer(value, most)) return `At most ${say(most)}.`;
  return null;
}

const HOW: Readonly<Record<Ruler['units'], string>> = {
  inches: 'Write inches, such as 8½, 8 1/2 or 8.5, or another unit behind the number, such as 20 cm.',
  centimetres: 'Write centimetres, such as 21 or 21.5, or another unit behind the number, such as 8 1/2 in.',
};

/** A number the designer chooses. It takes fractions the way they are written by hand, and never loses what was typed. */
export function NumberField(props: NumberFieldProps) {
  const { label, value, onChange, unit = 'length', least = 0, most = 400, help, bare = false } = props;
  const ruler = useRuler();
  const length = unit === 'length';
  const read = length ? ruler.read : readNumber;
  const step = length ? ruler.stepOf(props.step ?? 1 / 8) : (props.step ?? 1);
  const stride = length && ruler.units === 'inches' ? 8 : 10;
  const [typed, setTyped] = useState<string | null>(null);
  const markId = useId();
  const trouble = typed === null ? null : troubleWith(typed, { unit, least, most }, ruler);

  const finish = () => {
    if (typed === null || trouble !== null) return;
    const next = read(typed);
    setTyped(null);
    if (next !== null && next !== value) onChange(next);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter') finish();
    else if (event.key === 'Escape' && typed !== null) setTyped(null);
    else if (event.key === 'ArrowUp' || event.key === 'ArrowDown') {
      event.preventDefault();
      const far = (event.shiftKey ? stride : 1) * (event.key === 'ArrowUp' ? step : -step);
      const next = Math.min(most, Math.max(least, ((typed === null ? null : read(typed)) ?? value) + far));
      setTyped(null);
      if (next !== value) onChange(next);
    } else return;
    event.stopPropagation();
  };

  return (
    <TextField
      className={`${styles.field} ${styles.number}`}
      value={typed ?? (length ? ruler.bare(value) : fractionOf(value))}
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
        {length ? (
          <span id={markId} className={styles.mark} aria-hidden="true">
            {ruler.mark}
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
