import { type FormEvent, useState } from 'react';
import { Form, Input, Label, TextField } from 'react-aria-components';
import { Button } from '../../parts/Button.tsx';
import { Choice } from '../../parts/Choice.tsx';
import { Dialog } from '../../parts/Dialog.tsx';
import fields from '../../parts/fields.module.css';
import { NumberField } from '../../parts/NumberField.tsx';
import { Stepper } from '../../parts/Stepper.tsx';
import { useStudio, useStudioState } from '../../state/hooks.tsx';
import { drawNew, type NewBlock } from './drawNew.ts';

const AT_FIRST: NewBlock = { name: 'New block', across: 4, down: 4, finished: 12, made: 'drawn', designer: '' };

/** Asks for a name, a grid and a size, then opens a blank block on the drawing table; the library keeps its recipe. */
export function DrawNew({ onClose }: { readonly onClose: () => void }) {
  const studio = useStudio();
  const alone = useStudioState(({ history }) => history === null);
  const [asked, setAsked] = useState(AT_FIRST);
  const set = (more: Partial<NewBlock>) => setAsked((before) => ({ ...before, ...more }));
  const ready = asked.name.trim() !== '' && (!alone || asked.designer.trim() !== '');
  const onSubmit = (event: FormEvent) => {
    event.preventDefault();
    if (!ready) return;
    onClose();
    void drawNew(studio, { ...asked, name: asked.name.trim(), designer: asked.designer.trim() });
  };
  const foot = (
    <>
      <Button onPress={onClose}>Not now</Button>
      <Button tone="strong" type="submit" form="draw-new" isDisabled={!ready}>
        {asked.made === 'drawn' ? 'Draw it' : 'Choose units'}
      </Button>
    </>
  );
  return (
    <Dialog title="A new block" isOpen onClose={onClose} foot={foot}>
      <Form id="draw-new" onSubmit={onSubmit} className={fields.form ?? ''}>
        <Words label="Name" value={asked.name} onChange={(name) => set({ name })} />
        <Choice
          label="Made by"
          value={asked.made}
          options={[
            { id: 'drawn', says: 'Drawing it' },
            { id: 'units', says: 'Choosing units' },
          ]}
          onChange={(made) => set({ made })}
        />
        <Stepper
          label="Squares across"
          value={asked.across}
          least={1}
          most={64}
          onChange={(across) => set(asked.down === asked.across ? { across, down: across } : { across })}
        />
        <Stepper label="Squares down" value={asked.down} least={1} most={64} onChange={(down) => set({ down })} />
        <NumberField
          label="Finished width"
          value={asked.finished}
          least={1}
          most={60}
          onChange={(finished) => set({ finished })}
        />
        {alone ? (
          <Words label="Designer or studio" value={asked.designer} onChange={(designer) => set({ designer })} />
        ) : null}
        <p className="quiet small">{whereTo(alone)}</p>
      </Form>
    </Dialog>
  );
}

function whereTo(alone: boolean): string {
  if (alone) return 'No pattern is open: the block begins one of its own, in three sizes.';
  return 'The library keeps it, and it comes into the open pattern as one more block.';
}

interface WordsProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
}

function Words({ label, value, onChange }: WordsProps) {
  return (
    <TextField className={fields.field ?? ''} value={value} onChange={onChange} isRequired>
      <Label>{label}</Label>
      <span className={fields.typed}>
        <Input autoComplete="off" maxLength={200} onFocus={(event) => event.target.select()} />
      </span>
    </TextField>
  );
}
