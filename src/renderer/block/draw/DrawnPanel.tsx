import { renameBlock } from '../../../shared/pattern/edits/index.ts';
import { PanelPart, SidePanel } from '../../app/SidePanel.tsx';
import { TextField } from '../../parts/TextField.tsx';
import { useAct } from '../../state/hooks.tsx';
import { AnotherBlock } from '../AnotherBlock.tsx';
import { BlockSizes } from '../BlockSizes.tsx';
import { NotInQuilt } from '../NotInQuilt.tsx';
import { RemoveBlock } from '../RemoveBlock.tsx';
import type { ShownBlock } from '../useShownBlock.ts';
import { GridPart } from './GridPart.tsx';
import { KeepPart } from './KeepPart.tsx';
import { PinsPart } from './PinsPart.tsx';
import { RolesPart } from './RolesPart.tsx';
import { SizePart } from './SizePart.tsx';
import type { DrawnBlock } from './useDrawn.ts';

interface DrawnPanelProps {
  readonly shown: ShownBlock;
  readonly drawn: DrawnBlock;
}

/** A drawn block as a whole: its name, grid, roles, size, what is fixed of its sewing, and its recipe in the library. */
export function DrawnPanel({ shown, drawn }: DrawnPanelProps) {
  const act = useAct();
  const { choice, worked } = shown;
  return (
    <SidePanel title={choice.name} kind={`Block ${choice.id}, drawn`}>
      <TextField
        label="Name"
        value={choice.name}
        needed="A block needs a name."
        onChange={(name) => act(renameBlock, { block: choice.id, name })}
      />
      <NotInQuilt choice={choice} />
      <GridPart drawn={drawn} />
      <RolesPart drawn={drawn} choice={choice} />
      {worked === undefined ? null : <SizePart shown={shown} piecing={worked.piecing} />}
      <PinsPart drawn={drawn} />
      <KeepPart recipe={drawn.recipe} />
      <PanelPart title="In every size">
        <BlockSizes choice={choice} />
      </PanelPart>
      <AnotherBlock />
      <RemoveBlock choice={choice} />
    </SidePanel>
  );
}
