import { useState } from 'react';
import { placeInMotif, resizeMotif, turnMotif } from '../../../shared/pattern/edits/index.ts';
import { readMotif } from '../../../shared/pattern/motif.ts';
import { SidePanel } from '../../app/SidePanel.tsx';
import { BackTo } from '../../parts/BackTo.tsx';
import { Choice } from '../../parts/Choice.tsx';
import { type Cell, within } from '../../parts/lattice/lattice.ts';
import { Stepper } from '../../parts/Stepper.tsx';
import { TurnActs } from '../../parts/turning/TurnActs.tsx';
import { useAct, usePattern } from '../../state/hooks.tsx';
import { Pointed } from '../Pointed.tsx';
import { MotifGrid } from './MotifGrid.tsx';

/** The motif: a small grid of blocks and turns that repeats across and down. */
export function MotifPanel({ onBack }: { readonly onBack: () => void }) {
  const { setting, blocks } = usePattern();
  const act = useAct();
  const [picked, pick] = useState<readonly Cell[]>([]);
  const rows = readMotif(setting);
  const columns = Math.max(...rows.map((row) => row.length));
  const last = { column: columns - 1, row: rows.length - 1 };
  const cells = picked.filter(
    (cell) => within(cell, last) === cell || (cell.column <= last.column && cell.row <= last.row),
  );
  return (
    <SidePanel title="Motif" kind="Setting">
      <BackTo onPress={onBack}>The whole quilt</BackTo>
      <Pointed />
      <p className="quiet small">Repeats across and down from the top left corner.</p>
      <MotifGrid rows={rows} picked={cells} onPick={pick} />
      {cells.length === 0 ? null : <TurnActs onTurn={(by) => act(turnMotif, { cells, by })} />}
      {cells.length === 0 || blocks.length < 2 ? null : (
        <Choice
          label="Block there"
          value=""
          options={blocks.map(({ id }) => ({ id, says: id }))}
          onChange={(block) => act(placeInMotif, { cells, block })}
        />
      )}
      <Stepper
        label="Places across"
        value={columns}
        least={1}
        most={24}
        onChange={(next) => act(resizeMotif, { columns: next, rows: rows.length }, 'motif')}
      />
      <Stepper
        label="Places down"
        value={rows.length}
        least={1}
        most={24}
        onChange={(next) => act(resizeMotif, { columns, rows: next }, 'motif')}
      />
    </SidePanel>
  );
}
