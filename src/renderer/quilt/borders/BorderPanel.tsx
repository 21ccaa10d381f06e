import {
  moveBorder,
  removeBorder,
  renameBorder,
  setBorderFabric,
  setBorderFirst,
  setBorderWidth,
} from '../../../shared/pattern/edits/index.ts';
import type { Border } from '../../../shared/pattern/schema.ts';
import { PanelPart, SidePanel } from '../../app/SidePanel.tsx';
import { BackTo } from '../../parts/BackTo.tsx';
import { Button } from '../../parts/Button.tsx';
import { Choice } from '../../parts/Choice.tsx';
import { FabricPick } from '../../parts/FabricPick.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { TextField } from '../../parts/TextField.tsx';
import { useAct, usePattern } from '../../state/hooks.tsx';
import { Pointed } from '../Pointed.tsx';
import styles from '../quilt.module.css';
import { BorderBySize } from './BorderBySize.tsx';
import { BorderCut } from './BorderCut.tsx';
import { BorderStrips } from './BorderStrips.tsx';
import { ClosingsPart } from './ClosingsPart.tsx';
import { CornersFields } from './CornersFields.tsx';
import { PiecedFields } from './PiecedFields.tsx';

interface BorderPanelProps {
  readonly border: Border;
  readonly onBack: () => void;
}

/** One border: width, what it is made of and how it closes, its corners and cloth, and where a size differs. */
export function BorderPanel({ border, onBack }: BorderPanelProps) {
  const act = useAct();
  const { id, name, width, fabric } = border;
  return (
    <SidePanel title={name} kind="Border">
      <BackTo onPress={onBack}>The whole quilt</BackTo>
      <Pointed />
      <TextField
        label="Name"
        value={name}
        needed="A border needs a name."
        onChange={(next) => act(renameBorder, { border: id, name: next })}
      />
      <NumberField
        label="Finished width"
        value={width}
        least={0.0625}
        most={60}
        onChange={(next) => act(setBorderWidth, { border: id, width: next }, `border ${id}`)}
      />
      <PiecedFields border={border} />
      <ClosingsPart border={border} />
      <FabricPick
        label={border.pieced === undefined ? 'Fabric' : 'Fabric of plain corners'}
        value={fabric}
        onChange={(next) => act(setBorderFabric, { border: id, fabric: next })}
      />
      {border.pieced === undefined ? <CornersFields border={border} /> : null}
      {border.pieced === undefined ? <First border={border} /> : null}
      {border.pieced === undefined ? <BorderCut border={border} /> : null}
      <BorderStrips border={border} />
      <PanelPart title="Width in each size">
        <BorderBySize border={border} />
      </PanelPart>
      <Order border={border} onGone={onBack} />
    </SidePanel>
  );
}

function First({ border: { id, first } }: { readonly border: Border }) {
  const act = useAct();
  return (
    <Choice
      label="Sewn on first"
      value={first}
      options={[
        { id: 'sides', says: 'Sides' },
        { id: 'ends', says: 'Top and bottom' },
      ]}
      onChange={(next) => act(setBorderFirst, { border: id, first: next })}
    />
  );
}

function Order({ border, onGone }: { readonly border: Border; readonly onGone: () => void }) {
  const { borders } = usePattern();
  const act = useAct();
  const at = borders.findIndex(({ id }) => id === border.id);
  const remove = () => {
    act(removeBorder, { border: border.id });
    onGone();
  };
  return (
    <PanelPart title="Place">
      <div className={styles.acts}>
        <Button isDisabled={at === 0} onPress={() => act(moveBorder, { border: border.id, to: at - 1 })}>
          Move inwards
        </Button>
        <Button
          isDisabled={at === borders.length - 1}
          onPress={() => act(moveBorder, { border: border.id, to: at + 1 })}
        >
          Move outwards
        </Button>
        <Button tone="stops" onPress={remove}>
          Remove this border
        </Button>
      </div>
    </PanelPart>
  );
}
