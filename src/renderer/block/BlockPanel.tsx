import { renameBlock } from '../../shared/pattern/edits/index.ts';
import { PanelPart, SidePanel } from '../app/SidePanel.tsx';
import { Button } from '../parts/Button.tsx';
import { TextField } from '../parts/TextField.tsx';
import { useStudio } from '../state/hooks.tsx';
import { BlockFabrics } from './BlockFabrics.tsx';
import { BlockParameters } from './BlockParameters.tsx';
import { BlockSizes } from './BlockSizes.tsx';
import styles from './block.module.css';
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
      {recipe === undefined ? null : <BlockParameters choice={choice} recipe={recipe} />}
      {recipe === undefined ? null : <BlockFabrics choice={choice} recipe={recipe} />}
      <PanelPart title="In every size">
        <BlockSizes choice={choice} />
      </PanelPart>
      <PanelPart title="Another block">
        <p className="quiet small">Choose its recipe in the Library, and add it to this pattern there.</p>
        <Button className={styles.start ?? ''} small onPress={() => studio.show('library')}>
          Go to the Library
        </Button>
      </PanelPart>
      <RemoveBlock choice={choice} />
    </SidePanel>
  );
}
