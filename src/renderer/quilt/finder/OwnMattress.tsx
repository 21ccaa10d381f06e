import { useState } from 'react';
import type { Inches } from '../../../shared/measure/inches.ts';
import { CENTIMETRE, type Units } from '../../../shared/measure/metric.ts';
import type { Mattress } from '../../../shared/pattern/mattresses.ts';
import { Button } from '../../parts/Button.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { TextField } from '../../parts/TextField.tsx';
import { useRuler } from '../../state/hooks.tsx';
import styles from './finder.module.css';
import type { MattressChest } from './useMattresses.ts';

interface OwnMattressProps {
  readonly chest: MattressChest;
  /** The chosen mattress, when it is one of the designer's own. */
  readonly chosen: Mattress | null;
  readonly onChoose: (id: string) => void;
}

/** A mattress of the designer's own: kept with the library, so that every pattern finds it. */
export function OwnMattress({ chest, chosen, onChoose }: OwnMattressProps) {
  const [open, setOpen] = useState(false);
  if (open) return <NewMattress chest={chest} onDone={() => setOpen(false)} onChoose={onChoose} />;
  return (
    <div className={styles.acts}>
      <Button small onPress={() => setOpen(true)}>
        A mattress of your own
      </Button>
      {chosen === null ? null : (
        <Button small tone="stops" onPress={() => void chest.remove(chosen.id)}>
          Remove {chosen.name}
        </Button>
      )}
    </div>
  );
}

interface NewMattressProps {
  readonly chest: MattressChest;
  readonly onDone: () => void;
  readonly onChoose: (id: string) => void;
}

/** Where the fields begin, in round numbers of the ruler. */
const FIRST_MATTRESSES: Readonly<Record<Units, { readonly width: Inches; readonly length: Inches }>> = {
  inches: { width: 36, length: 75 },
  centimetres: { width: 90 * CENTIMETRE, length: 200 * CENTIMETRE },
};

function NewMattress({ chest, onDone, onChoose }: NewMattressProps) {
  const firstMattress = FIRST_MATTRESSES[useRuler().units];
  const [name, setName] = useState('');
  const [width, setWidth] = useState(firstMattress.width);
  const [length, setLength] = useState(firstMattress.length);
  const keep = async () => {
    const id = await chest.add(name, width, length);
    if (id === null) return;
    onChoose(id);
    onDone();
  };
  return (
    <section className={styles.own} aria-label="A mattress of your own">
      <TextField label="What it is called" value={name} onChange={setName} />
      <div className={styles.two}>
        <NumberField label="Mattress width" value={width} least={6} most={200} step={1} onChange={setWidth} />
        <NumberField label="Mattress length" value={length} least={6} most={200} step={1} onChange={setLength} />
      </div>
      <div className={styles.acts}>
        <Button small isDisabled={name.trim() === ''} onPress={() => void keep()}>
          Keep it
        </Button>
        <Button small tone="bare" onPress={onDone}>
          Leave it
        </Button>
      </div>
    </section>
  );
}
