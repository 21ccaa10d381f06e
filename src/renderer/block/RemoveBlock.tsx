import { useState } from 'react';
import { removeBlock } from '../../shared/pattern/edits/index.ts';
import type { BlockChoice } from '../../shared/pattern/schema.ts';
import { PanelPart } from '../app/SidePanel.tsx';
import { Button } from '../parts/Button.tsx';
import { Pick } from '../parts/Pick.tsx';
import { useAct, usePattern, useSelection } from '../state/hooks.tsx';

/** Takes the block out of the pattern; another stands in its places. */
export function RemoveBlock({ choice }: { readonly choice: BlockChoice }) {
  const { blocks } = usePattern();
  const act = useAct();
  const [, select] = useSelection();
  const others = blocks.filter(({ id }) => id !== choice.id);
  const [chosen, choose] = useState<string | null>(null);
  const [first] = others;
  if (first === undefined) return null;
  const instead = others.some(({ id }) => id === chosen) ? (chosen as string) : first.id;
  return (
    <PanelPart title="Remove this block">
      <Pick
        label="What stands in its places"
        value={instead}
        options={others.map(({ id, name }) => ({ id, name: `${id} ${name}` }))}
        onChange={choose}
      />
      <Button
        tone="stops"
        onPress={() => {
          act(removeBlock, { block: choice.id, instead });
          select({ kind: 'block', block: instead });
        }}
      >
        Remove block {choice.id}
      </Button>
    </PanelPart>
  );
}
