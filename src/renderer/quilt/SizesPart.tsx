import { addSize } from '../../shared/pattern/edits/index.ts';
import type { Size } from '../../shared/pattern/schema.ts';
import { PanelPart } from '../app/SidePanel.tsx';
import { Button } from '../parts/Button.tsx';
import { Rows } from '../parts/Rows.tsx';
import { usePattern, useRuler, useStudio, useWorked } from '../state/hooks.tsx';
import styles from './quilt.module.css';
import { quiltStore } from './quiltStore.ts';

/** Every size with its blocks and what it measures; a press opens it. */
export function SizesPart() {
  const { sizes } = usePattern();
  const worked = useWorked();
  const studio = useStudio();
  const ruler = useRuler();
  const open = (size: string) => {
    studio.chooseSize(size);
    studio.select({ kind: 'size', size });
  };
  const finished = (size: Size) => {
    const quilt = worked?.sizes.find((one) => one.size.id === size.id)?.quilt;
    return quilt === undefined ? 'not laid out' : ruler.size(quilt.finished.width.value, quilt.finished.height.value);
  };
  const add = () => {
    const like = sizes.at(-1) as Size;
    studio.act(addSize, { name: 'New size', across: like.across, down: like.down, block: like.block });
    const made = studio.store.getState().history?.now.sizes.at(-1);
    if (made !== undefined) open(made.id);
  };
  return (
    <PanelPart title="Sizes">
      <Rows
        label="Sizes"
        rows={sizes.map((size) => ({
          id: size.id,
          name: size.name,
          more: `${size.across} × ${size.down} blocks of ${ruler.length(size.block)}`,
          end: finished(size),
          onPress: () => open(size.id),
        }))}
      />
      <div className={styles.acts}>
        <Button small onPress={add} isDisabled={sizes.length >= 12}>
          Add a size
        </Button>
        <Button small onPress={() => quiltStore.setState({ finder: true })}>
          Find a size
        </Button>
      </div>
    </PanelPart>
  );
}
