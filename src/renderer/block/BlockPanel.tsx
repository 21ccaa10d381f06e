import { renameBlock } from '../../shared/pattern/edits/index.ts';
import { PanelPart, SidePanel } from '../app/SidePanel.tsx';
import { TextField } from '../parts/TextField.tsx';
import { useStudio } from '../state/hooks.tsx';
import { AnotherBlock } from './AnotherBlock.tsx';
import { BlockFabrics } from './BlockFabrics.tsx';
import { BlockParameters } from './BlockParameters.tsx';
import { BlockSizes } from './BlockSizes.tsx';
import { DrawFreely } from './draw/DrawFreely.tsx';
import { SizePart } from './draw/SizePart.tsx';
import { NotInQuilt } from './NotInQuilt.tsx';
import { RemoveBlock } from './RemoveBlock.tsx';
import type { ShownBlock } from './useShownBlock.ts';

/** The block as a whole: its name, its recipe's numbers, its fabrics, and what it measures in every size. */
export function BlockPanel({ shown }: { readonly shown: ShownBlock }) {
  const studio = useStudio();
  const { choice, recipe } = shown;
  return (
    <SidePanel title={choice.name} kind={`Block ${choice.id}`}>
      <TextField
        label="Name"
        value={choice.name}
        needed="A block needs a name."
        onChange={(name) => studio.act(renameBlock, { block: choice.id, name })}
      />
      <NotInQuilt choice={choice} />
      {shown.worked === undefined ? null : <DrawFreely shown={shown} block={shown.worked} />}
      {recipe === undefined ? null : <BlockParameters choice={choice} recipe={recipe} />}
      {recipe === undefined ? null : <BlockFabrics choice={choice} recipe={recipe} />}
      <PanelPart title="In every size">
        <BlockSizes choice={choice} />
      </PanelPart>
      {shown.worked === undefined ? null : <SizePart shown={shown} piecing={shown.worked.piecing} />}
      <AnotherBlock />
      <RemoveBlock choice={choice} />
    </SidePanel>
  );
}
