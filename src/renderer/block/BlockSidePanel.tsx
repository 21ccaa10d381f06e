import { FabricPanel } from '../parts/panels/FabricPanel.tsx';
import { useSelection } from '../state/hooks.tsx';
import { BlockPanel } from './BlockPanel.tsx';
import { CellsPanel } from './CellsPanel.tsx';
import { UnitPanel } from './UnitPanel.tsx';
import type { ShownBlock } from './useShownBlock.ts';

/** What is selected in the block view. */
export function BlockSidePanel({ shown }: { readonly shown: ShownBlock }) {
  const [selection, select] = useSelection();
  const here = 'block' in selection && selection.block === shown.choice.id;
  const back = () => select({ kind: 'block', block: shown.choice.id });
  if (selection.kind === 'fabric')
    return <FabricPanel fabric={selection.fabric} onBack={back} backTo={`Block ${shown.choice.id}`} />;
  if (here && selection.kind === 'cells' && shown.worked !== undefined) {
    return <CellsPanel shown={shown} block={shown.worked} cells={selection.cells} onBack={back} />;
  }
  const unit =
    here && selection.kind === 'unit' ? shown.sized?.units.find((one) => one.unit.key === selection.unit) : undefined;
  if (unit !== undefined && shown.worked !== undefined)
    return <UnitPanel shown={shown} block={shown.worked} made={unit} onBack={back} />;
  return <BlockPanel shown={shown} />;
}
