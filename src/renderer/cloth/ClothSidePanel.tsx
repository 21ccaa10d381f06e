import { FabricPanel } from '../parts/panels/FabricPanel.tsx';
import { useSelection, useWorked } from '../state/hooks.tsx';
import { WHOLE_PATTERN } from '../state/selection.ts';
import { ClothPanel } from './ClothPanel.tsx';
import { PiecePanel } from './PiecePanel.tsx';
import { pieceRows } from './pieceRows.ts';

/** What is selected in the cloth view. */
export function ClothSidePanel() {
  const [selection, select] = useSelection();
  const worked = useWorked();
  const back = () => select(WHOLE_PATTERN);
  if (selection.kind === 'fabric')
    return <FabricPanel fabric={selection.fabric} onBack={back} backTo="All the cloth" />;
  const rows = selection.kind === 'piece' && worked !== null ? pieceRows(worked) : [];
  const row = selection.kind === 'piece' ? rows.find(({ letter }) => letter === selection.letter) : undefined;
  return row === undefined ? <ClothPanel /> : <PiecePanel row={row} onBack={back} />;
}
