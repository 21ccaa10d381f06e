import { Button, Group, Input, Label, NumberField, Text } from 'react-aria-components';
import styles from './Stepper.module.css';

export interface StepperProps {
  readonly label: string;
  readonly value: number;
  readonly onChange: (value: number) => void;
  readonly least: number;
  readonly most: number;
  readonly help?: string;
}

/** A whole number, one more or one less at a press; it may be typed as well. */
export function Stepper({ label, value, onChange, least, most, help }: StepperProps) {
  return (
    <NumberField
      className={styles.stepper ?? ''}
      value={value}
      minValue={least}
      maxValue={most}
      step={1}
      formatOptions={{ useGrouping: false }}
      onChange={(next) => {
        if (Number.isInteger(next) && next !== value) onChange(next);
      }}
    >
      <Label>{label}</Label>
      <Group className={styles.group ?? ''}>
        <Button slot="decrement">−</Button>
        <Input />
        <Button slot="increment">+</Button>
      </Group>
      {help === undefined ? null : (
        <Text slot="description" className={styles.help ?? ''}>
          {help}
        </Text>
      )}
    </NumberField>
  );
}
