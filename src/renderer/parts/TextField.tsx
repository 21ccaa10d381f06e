import type { KeyboardEvent } from 'react';
import { TextField as AriaTextField, FieldError, Input, Label, Text, TextArea } from 'react-aria-components';
import styles from './fields.module.css';
import { useTyping } from './useTyping.ts';

export interface TextFieldProps {
  readonly label: string;
  readonly value: string;
  /** Told once the designer has finished typing; all that is told with one mark belongs to one act. */
  readonly onChange: (value: string, mark: string) => void;
  /** Tell it also whenever the hand rests: for long texts, so that a crash loses none of them. */
  readonly whileTyping?: boolean;
  /** Several lines. */
  readonly long?: boolean;
  /** Something must be written here; the words say what. */
  readonly needed?: string;
  readonly help?: string;
  /** The label is heard, not seen. */
  readonly bare?: boolean;
}

/** Words the designer writes. They go into the pattern when the field is left or Enter is pressed; Escape takes them back. */
export function TextField(props: TextFieldProps) {
  const { label, value, onChange, long = false, whileTyping = false, needed, help, bare = false } = props;
  const wrong = (text: string) => needed !== undefined && text.trim() === '';
  const { typed, type, finish, giveUp } = useTyping({ value, onChange, wrong, whileTyping });
  const trouble = typed !== null && wrong(typed) ? needed : null;
  const settled = typed === null || undefined;
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter' && (!long || event.ctrlKey || event.metaKey)) finish();
    else if (event.key === 'Escape' && typed !== null) {
      event.stopPropagation();
      giveUp();
    }
  };
  return (
    <AriaTextField
      className={styles.field ?? ''}
      value={typed ?? value}
      onChange={type}
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
