import { useState } from 'react';
import { placeInMotif, resizeMotif, turnMotif } from '../../../shared/pattern/edits/index.ts';
import { readMotif } from '../../../shared/pattern/motif.ts';
import { SidePanel } from '../../app/SidePanel.tsx';
import { BackTo } from '../../parts/BackTo.tsx';
import type { Cell } from '../../parts/lattice/lattice.ts';
import { Stepper } from '../../parts/Stepper.tsx';
import { TurnActs } from '../../parts/turning/TurnActs.tsx';
import { useAct, usePattern } from '../../state/hooks.tsx';
import { Pointed } from '../Pointed.tsx';
import { BetweenPart } from './BetweenPart.tsx';
import { BlockThere } from './BlockThere.tsx';
import { MotifGrid } from './MotifGrid.tsx';
import { ReflectPart } from './ReflectPart.tsx';
import { SinglesPart } from './SinglesPart.tsx';
import { TemplatesPart } from './TemplatesPart.tsx';

/** The motif: a small grid of blocks and turns that repeats, by hand or as one of the classic settings. */
export function MotifPanel({ onBack }: { readonly onBack: () => void }) {
  const { setting } = usePattern();
  const from = setting.reflect === undefined ? 'the top left corner' : 'the middle of the quilt';
  return (
    <SidePanel title="Motif" kind="Setting">
      <BackTo onPress={onBack}>The whole quilt</BackTo>
      <Pointed />
      <p className="quiet small">Repeats across and down from {from}. Pick places in it to turn or change them.</p>
      <OwnMotif />
      <ReflectPart />
      {setting.kind === 'on-point' ? <BetweenPart setting={setting} /> : null}
      <SinglesPart />
      <TemplatesPart />
    </SidePanel>
  );
}

function OwnMotif() {
  const { setting } = usePattern();
  const act = useAct();
  const [picked, pick] = useState<readonly Cell[]>([]);
  const rows = readMotif(setting);
  const columns = Math.max(...rows.map((row) => row.length));
  const cells = picked.filter(({ column, row }) => column < columns && row < rows.length);
  return (
    <>
      <MotifGrid
        rows={rows}
        picked={cells}
        onPick={pick}
        onTurn={(by) => act(turnMotif, { cells, by })}
        label="Places of the motif"
      />
      {cells.length === 0 ? null : <TurnActs onTurn={(by) => act(turnMotif, { cells, by })} />}
      {cells.length === 0 ? null : <BlockThere onPlace={(block) => act(placeInMotif, { cells, block })} />}
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
    </>
  );
}
