import { addFabric } from '../../shared/pattern/edits/index.ts';
import { PanelPart } from '../app/SidePanel.tsx';
import { Button } from '../parts/Button.tsx';
import { FabricSwatch } from '../parts/FabricSwatch.tsx';
import { Rows } from '../parts/Rows.tsx';
import { usePattern, useStudio } from '../state/hooks.tsx';
import styles from './cloth.module.css';

/** Undyed cloth: what a new fabric is until a colour is chosen. */
const UNDYED = '#d9cfbf';

/** The pattern's fabrics, and one more. */
export function AddFabric() {
  const { fabrics } = usePattern();
  const studio = useStudio();
  const open = (fabric: string) => studio.select({ kind: 'fabric', fabric });
  const add = () => {
    studio.act(addFabric, { name: 'New fabric', value: 'medium', colour: UNDYED });
    const made = studio.store.getState().history?.now.fabrics.at(-1);
    if (made !== undefined) open(made.id);
  };
  return (
    <PanelPart title="Fabrics">
      <Rows
        label="Fabrics"
        rows={fabrics.map(({ id, name, colour, value, photograph }) => ({
          id,
          name,
          lead: <FabricSwatch colour={colour} name={name} photograph={photograph} bare />,
          end: value,
          onPress: () => open(id),
        }))}
      />
      <Button small className={styles.start ?? ''} onPress={add} isDisabled={fabrics.length >= 60}>
        Add a fabric
      </Button>
    </PanelPart>
  );
}
