import { oneBlock } from '../../shared/workroom/oneBlock.ts';
import type { WorkedBlock } from '../../shared/workroom/workedOut.ts';
import { FabricPanel } from '../parts/panels/FabricPanel.tsx';
import { useSelection, useWorked } from '../state/hooks.tsx';
import { BlockPanel } from './BlockPanel.tsx';
import { CellsPanel } from './cells/CellsPanel.tsx';
import { DrawnPanel } from './draw/DrawnPanel.tsx';
import { PatchesPanel } from './draw/PatchesPanel.tsx';
import { PinUnit } from './draw/PinUnit.tsx';
import { SeamPanel } from './draw/SeamPanel.tsx';
import type { DrawnBlock } from './draw/useDrawn.ts';
import { UnitPanel } from './UnitPanel.tsx';
import type { ShownBlock } from './useShownBlock.ts';

/** What is selected in the block view. */
export function BlockSidePanel({ shown, drawn }: { readonly shown: ShownBlock; readonly drawn: DrawnBlock | null }) {
  const [selection, select] = useSelection();
  const here = 'block' in selection && selection.block === shown.choice.id;
  const back = () => select({ kind: 'block', block: shown.choice.id });
  if (selection.kind === 'fabric')
    return <FabricPanel fabric={selection.fabric} onBack={back} backTo={`Block ${shown.choice.id}`} />;
  if (here && selection.kind === 'cells' && shown.worked !== undefined) {
    return <CellsPanel shown={shown} block={shown.worked} cells={selection.cells} onBack={back} />;
  }
  if (here && selection.kind === 'unit' && shown.worked !== undefined) {
    const panel = <UnitPicked shown={shown} drawn={drawn} block={shown.worked} unit={selection.unit} onBack={back} />;
    if (shown.worked.piecing.units.some(({ key }) => key === selection.unit)) return panel;
  }
  if (drawn === null) return <BlockPanel shown={shown} />;
  if (here && selection.kind === 'seam') {
    const finished = shown.sized === undefined ? drawn.recipe.finished : shown.size?.quilt.block.width;
    const grid = (finished ?? drawn.recipe.finished) / drawn.drawing.width;
    return <SeamPanel drawn={drawn} picked={selection} grid={grid} onBack={back} />;
  }
  const patches =
    here && selection.kind === 'patches' ? selection.patches.filter((one) => drawn.drawing.patches[one]) : [];
  return patches.length > 0 ? (
    <PatchesPanel drawn={drawn} patches={patches} onBack={back} />
  ) : (
    <DrawnPanel shown={shown} drawn={drawn} />
  );
}

interface UnitPickedProps {
  readonly shown: ShownBlock;
  readonly drawn: DrawnBlock | null;
  readonly block: WorkedBlock;
  readonly unit: string;
  readonly onBack: () => void;
}

/** A unit in the size looked at; where that size does not take the block, as one block of its usual size would have it. */
function UnitPicked({ shown, drawn, block, unit, onBack }: UnitPickedProps) {
  const worked = useWorked();
  if (worked === null) return null;
  const sized = shown.sized ?? oneBlock(block, worked.pattern, shown.recipe?.finished ?? 12);
  const made = sized.units.find((one) => one.unit.key === unit);
  if (made === undefined) return null;
  return (
    <UnitPanel shown={shown} block={block} made={made} onBack={onBack}>
      {drawn === null ? null : <PinUnit drawn={drawn} block={block} made={made} />}
    </UnitPanel>
  );
}
