import { type FormEvent, useState } from 'react';
import { Form, Input, Label, TextField } from 'react-aria-components';
import { addBlock } from '../../../shared/pattern/edits/index.ts';
import { freeId } from '../../../shared/pattern/edits/list.ts';
import { freshPattern } from '../../../shared/pattern/fresh.ts';
import { Button } from '../../parts/Button.tsx';
import { Dialog } from '../../parts/Dialog.tsx';
import fields from '../../parts/fields.module.css';
import { NumberField } from '../../parts/NumberField.tsx';
import { Stepper } from '../../parts/Stepper.tsx';
import { useStudio } from '../../state/hooks.tsx';
import { refusalOf } from '../../state/host.ts';
import type { Studio } from '../../state/studio.ts';
import { type FreshDrawing, freeRecipeId, freshDrawing } from './freshDrawing.ts';

interface DrawNewProps {
  readonly isOpen: boolean;
  readonly onClose: () => void;
}

const AT_FIRST: FreshDrawing = { name: 'New block', across: 4, down: 4, finished: 12 };

/** Asks for a name, a grid and a size, then opens a blank block on the drawing table; the library keeps its recipe. */
export function DrawNew({ isOpen, onClose }: DrawNewProps) {
  const studio = useStudio();
  const [asked, setAsked] = useState(AT_FIRST);
  const set = (more: Partial<FreshDrawing>) => setAsked((before) => ({ ...before, ...more }));
  const ready = asked.name.trim() !== '';
  const onSubmit = (event: FormEvent) => {
    event.preventDefault();
    if (!ready) return;
    onClose();
    void drawNew(studio, { ...asked, name: asked.name.trim() });
  };
  const foot = (
    <>
      <Button onPress={onClose}>Not now</Button>
      <Button tone="strong" type="submit" form="draw-new" isDisabled={!ready}>
        Draw it
      </Button>
    </>
  );
  return (
    <Dialog title="A new block" isOpen={isOpen} onClose={onClose} foot={foot}>
      <Form id="draw-new" onSubmit={onSubmit} className={fields.form ?? ''}>
        <TextField className={fields.field ?? ''} value={asked.name} onChange={(name) => set({ name })} isRequired>
          <Label>Name</Label>
          <span className={fields.typed}>
            <Input autoComplete="off" maxLength={200} />
          </span>
        </TextField>
        <Stepper
          label="Grid, squares across"
          value={asked.across}
          least={1}
          most={64}
          onChange={(across) => set(asked.down === asked.across ? { across, down: across } : { across })}
        />
        <Stepper label="Grid, squares down" value={asked.down} least={1} most={64} onChange={(down) => set({ down })} />
        <NumberField
          label="Finished width"
          value={asked.finished}
          least={1}
          most={60}
          onChange={(finished) => set({ finished })}
        />
      </Form>
    </Dialog>
  );
}

/** Makes the recipe, keeps it in the library, and opens it in the pattern that is open, or in a new one. */
async function drawNew(studio: Studio, asked: FreshDrawing): Promise<void> {
  try {
    const open = studio.store.getState().history?.now;
    const id = await freeRecipeId(studio.host, asked.name, open?.recipes.map((recipe) => recipe.id) ?? []);
    const recipe = freshDrawing(id, asked);
    const { revision } = await studio.host.saveRecipe(recipe);
    const revisions = { [id]: revision };
    if (open === undefined || open.blocks.length >= 26) await inNewPattern(studio, recipe, revisions);
    else studio.act(addBlock, { recipe, revisions });
    const block = studio.store.getState().history?.now.blocks.find((one) => one.recipe === id);
    if (block === undefined) return;
    studio.select({ kind: 'block', block: block.id });
    studio.show('block');
  } catch (thrown) {
    studio.say(refusalOf(thrown).words, { tone: 'stops' });
  }
}

async function inNewPattern(
  studio: Studio,
  recipe: ReturnType<typeof freshDrawing>,
  revisions: Readonly<Record<string, number>>,
): Promise<void> {
  const taken = (await studio.host.patterns()).map(({ id }) => id);
  const title = `${recipe.name} Quilt`;
  const date = new Date().toLocaleDateString('sv-SE');
  const fresh = { id: freeId(title, taken), title, designer: 'My studio', date, revisions };
  await studio.openFresh(freshPattern(recipe, [], fresh));
}
