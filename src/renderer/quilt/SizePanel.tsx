import { moveSize, removeSize, renameSize, setSizeBlock, setSizeBlocks } from '../../shared/pattern/edits/index.ts';
import type { Size } from '../../shared/pattern/schema.ts';
import { PanelPart, SidePanel } from '../app/SidePanel.tsx';
import { BackTo } from '../parts/BackTo.tsx';
import { Button } from '../parts/Button.tsx';
import { NumberField } from '../parts/NumberField.tsx';
import { Stepper } from '../parts/Stepper.tsx';
import { TextField } from '../parts/TextField.tsx';
import { Why } from '../parts/Why.tsx';
import { useAct, usePattern, useWorked } from '../state/hooks.tsx';
import { Pointed } from './Pointed.tsx';
import styles from './quilt.module.css';
import { SizeBorders } from './SizeBorders.tsx';

interface SizePanelProps {
  readonly size: Size;
  readonly onBack: () => void;
}

/** One size: how many blocks of what size, which borders differ, and what it comes to. */
export function SizePanel({ size, onBack }: SizePanelProps) {
  const act = useAct();
  const { id, name, across, down, block } = size;
  return (
    <SidePanel title={name} kind="Size">
      <BackTo onPress={onBack}>The whole quilt</BackTo>
      <Pointed />
      <TextField
        label="Name"
        value={name}
        needed="A size needs a name."
        onChange={(next) => act(renameSize, { size: id, name: next })}
      />
      <Stepper
        label="Blocks across"
        value={across}
        least={1}
        most={200}
        onChange={(next) => act(setSizeBlocks, { size: id, across: next }, `across ${id}`)}
      />
      <Stepper
        label="Blocks down"
        value={down}
        least={1}
        most={200}
        onChange={(next) => act(setSizeBlocks, { size: id, down: next }, `down ${id}`)}
      />
      <NumberField
        label="Finished block"
        value={block}
        least={0.5}
        most={120}
        step={0.5}
        onChange={(next) => act(setSizeBlock, { size: id, block: next }, `block ${id}`)}
      />
      <Sums size={size} />
      <SizeBorders size={size} />
      <Order size={size} onGone={onBack} />
    </SidePanel>
  );
}

function Sums({ size }: { readonly size: Size }) {
  const quilt = useWorked()?.sizes.find((one) => one.size.id === size.id)?.quilt;
  if (quilt === undefined) return null;
  const { centre, finished, unfinished } = quilt;
  const lines = [
    { name: 'Blocks alone', of: centre },
    { name: 'Finished', of: finished },
    { name: 'Top before binding', of: unfinished },
  ];
  return (
    <dl className={styles.sums}>
      {lines.map(({ name, of }) => (
        <div key={name} className={styles.sum}>
          <dt>{name}</dt>
          <dd>
            <Why traced={of.width} /> × <Why traced={of.height} />
          </dd>
        </div>
      ))}
    </dl>
  );
}

function Order({ size, onGone }: { readonly size: Size; readonly onGone: () => void }) {
  const { sizes } = usePattern();
  const act = useAct();
  const at = sizes.findIndex(({ id }) => id === size.id);
  const remove = () => {
    act(removeSize, { size: size.id });
    onGone();
  };
  return (
    <PanelPart title="Place">
      <div className={styles.acts}>
        <Button isDisabled={at === 0} onPress={() => act(moveSize, { size: size.id, to: at - 1 })}>
          Move before
        </Button>
        <Button isDisabled={at === sizes.length - 1} onPress={() => act(moveSize, { size: size.id, to: at + 1 })}>
          Move after
        </Button>
        <Button tone="stops" isDisabled={sizes.length === 1} onPress={remove}>
          Remove this size
        </Button>
      </div>
    </PanelPart>
  );
}
