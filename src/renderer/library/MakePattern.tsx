import { type FormEvent, useState } from 'react';
import { Form, Input, Label, TextField } from 'react-aria-components';
import type { RecipeCard } from '../../shared/contract.ts';
import { freshPattern } from '../../shared/pattern/fresh.ts';
import { Button } from '../parts/Button.tsx';
import { Dialog } from '../parts/Dialog.tsx';
import fields from '../parts/fields.module.css';
import { useStudio, useStudioState } from '../state/hooks.tsx';
import { gatherKept, revisionsOf } from './gather.ts';
import { attempt, freePatternId, keepFresh } from './patternActs.ts';

export interface MakePatternProps {
  readonly card: RecipeCard;
  readonly isOpen: boolean;
  readonly onClose: () => void;
}

/** Asks what the new pattern is called and who designs it, then makes it in three sizes. */
export function MakePattern({ card, isOpen, onClose }: MakePatternProps) {
  const { recipe, revision } = card;
  const studio = useStudio();
  const designer = useStudioState(({ history }) => history?.now.words.designer ?? '');
  const [title, setTitle] = useState(`${recipe.name} quilt`);
  const [by, setBy] = useState(designer);
  const ready = title.trim() !== '' && by.trim() !== '';
  const make = async () => {
    onClose();
    await attempt(studio, async () => {
      const held = await gatherKept(studio.host, recipe);
      const revisions = revisionsOf([{ recipe, revision }, ...held]);
      const id = await freePatternId(studio, title);
      const date = new Date().toLocaleDateString('sv-SE');
      const about = { id, title: title.trim(), designer: by.trim(), date, revisions };
      await keepFresh(
        studio,
        freshPattern(
          recipe,
          held.map((kept) => kept.recipe),
          about,
        ),
      );
    });
  };
  const onSubmit = (event: FormEvent) => {
    event.preventDefault();
    if (ready) void make();
  };
  const foot = (
    <>
      <Button onPress={onClose}>Not now</Button>
      <Button tone="strong" type="submit" form="make-pattern" isDisabled={!ready}>
        Make it
      </Button>
    </>
  );
  return (
    <Dialog title={`A pattern from ${recipe.name}`} isOpen={isOpen} onClose={onClose} foot={foot}>
      <Form id="make-pattern" onSubmit={onSubmit} className={fields.form ?? ''}>
        <Field label="Title" value={title} onChange={setTitle} />
        <Field label="Designer or studio" value={by} onChange={setBy} />
        <p className="quiet small">
          It starts with three sizes, a border and fabrics by value. Everything can be changed.
        </p>
      </Form>
    </Dialog>
  );
}

interface FieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
}

function Field({ label, value, onChange }: FieldProps) {
  return (
    <TextField className={fields.field ?? ''} value={value} onChange={onChange} isRequired>
      <Label>{label}</Label>
      <span className={fields.typed}>
        <Input autoComplete="off" maxLength={200} />
      </span>
    </TextField>
  );
}
