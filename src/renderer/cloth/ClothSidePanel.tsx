import { FabricPanel } from '../parts/panels/FabricPanel.tsx';
import { usePattern, useSelection, useWorked } from '../state/hooks.tsx';
import { WHOLE_PATTERN } from '../state/selection.ts';
import { BundlePanel } from './bundle/BundlePanel.tsx';
import { ClothPanel } from './ClothPanel.tsx';
import { useClothState } from './clothStore.ts';
import { PiecePanel } from './PiecePanel.tsx';
import { pieceRows } from './pieceRows.ts';

/** What is selected in the cloth view. */
export function ClothSidePanel() {
  const [selection, select] = useSelection();
  const worked = useWorked();
  const { bundle } = usePattern();
  const part = useClothState((state) => state.part);
  const back = () => select(WHOLE_PATTERN);
  if (selection.kind === 'fabric')
    return <FabricPanel fabric={selection.fabric} onBack={back} backTo="All the cloth" />;
  const rows = selection.kind === 'piece' && worked !== null ? pieceRows(worked) : [];
  const own = selection.kind === 'piece' ? rows.filter(({ letter }) => letter === selection.letter) : [];
  if (own.length > 0) return <PiecePanel rows={own} onBack={back} />;
  return part === 'bundle' && bundle !== undefined ? <BundlePanel bundle={bundle} /> : <ClothPanel />;
}
