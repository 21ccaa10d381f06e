import type { BlockChoice } from '../../shared/pattern/schema.ts';
import { usedBlocks } from '../../shared/pattern/usedBlocks.ts';
import { PanelPart } from '../app/SidePanel.tsx';
import { Button } from '../parts/Button.tsx';
import { usePattern, useStudio } from '../state/hooks.tsx';

/** The way on for a block that stands nowhere yet; nothing for any other. */
export function NotInQuilt({ choice }: { readonly choice: BlockChoice }) {
  const studio = useStudio();
  if (usedBlocks(usePattern()).has(choice.id)) return null;
  const go = () => {
    studio.show('quilt');
    studio.select({ kind: 'motif' });
  };
  return (
    <PanelPart title="Not in the quilt yet">
      <p className="quiet small">Pick places in the motif, then block {choice.id} for them.</p>
      <div>
        <Button small onPress={go}>
          To the motif
        </Button>
      </div>
    </PanelPart>
  );
}
