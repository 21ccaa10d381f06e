import { type KeyboardEvent, useState } from 'react';
import { TextField as AriaTextField, FieldError, Input, Label, Text, TextArea } from 'react-aria-components';
import styles from './fields.module.css';

export interface TextFieldProps {
  readonly label: string;
  readonly value: string;
  /** Told once the designer has finished typing. */
  readonly onChange: (value: string) => void;
  /** Several lines. */
  readonly long?: boolean;
  /** Something must be written here; the words say what. */
  readonly needed?: string;
  readonly help?: string;
  /** The label is heard, not seen. */
  readonly bare?: boolean;
}

/** Words the designer writes. They go into the pattern when the field is left or Enter is pressed; Escape takes them back. */
export function TextField({ label, value, onChange, long = false, needed, help, bare = false }: TextFieldProps) {
  const [typed, setTyped] = useState<string | null>(null);
  const trouble = typed !== null && needed !== undefined && typed.trim() === '' ? needed : null;
  const settled = typed === null || undefined;
  const finish = () => {
    if (typed === null || trouble !== null) return;
    setTyped(null);
    if (typed.trim() !== value) onChange(typed.trim());
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter' && (!long || event.ctrlKey || event.metaKey)) finish();
    else if (event.key === 'Escape' && typed !== null) {
      event.stopPropagation();
      setTyped(null);
    }
  };
  return (
    <AriaTextField
      className={styles.field ?? ''}
      value={typed ?? value}
      onChange={setTyped}
      onBlur={finish}
      isInvalid={trouble !== null}
      {...(bare ? { 'aria-label': label } : {})}
    >
      {bare ? null : <Label>{label}</Label>}
      <span className={styles.typed}>
        {long ? (
          <TextArea rows={4} onKeyDown={onKeyDown} data-settled={settled} />
        ) : (
          <Input onKeyDown={onKeyDown} autoComplete="off" data-settled={settled} />
        )}
      </span>
      {help === undefined ? null : (
        <Text slot="description" className={styles.help}>
          {help}
        </Text>
      )}
      <FieldError className={styles.trouble ?? ''}>{trouble}</FieldError>
    </AriaTextField>
  );
}
