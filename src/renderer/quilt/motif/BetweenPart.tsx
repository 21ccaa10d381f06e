import { useState } from 'react';
import { afterTurn, type Turn } from '../../../shared/drawing/turn.ts';
import { setBetween } from '../../../shared/pattern/edits/index.ts';
import type { OnPointSetting } from '../../../shared/pattern/schema.ts';
import { readRow, type Token, writeRow } from '../../../shared/recipe/token.ts';
import { PanelPart } from '../../app/SidePanel.tsx';
import { Choice } from '../../parts/Choice.tsx';
import { type Cell, hasCell } from '../../parts/lattice/lattice.ts';
import { Stepper } from '../../parts/Stepper.tsx';
import { TurnActs } from '../../parts/turning/TurnActs.tsx';
import { useAct, usePattern } from '../../state/hooks.tsx';
import { BlockThere } from './BlockThere.tsx';
import { MotifGrid } from './MotifGrid.tsx';

/** The blocks that stand between the others on point: by the same motif, or by one of their own. */
export function BetweenPart({ setting }: { readonly setting: OnPointSetting }) {
  const { blocks } = usePattern();
  const act = useAct();
  const { between } = setting;
  const plain = blocks.at(-1)?.id ?? 'A';
  return (
    <PanelPart title="Blocks between">
      <Choice
        label="They follow"
        value={between === undefined ? 'same' : 'own'}
        options={[
          { id: 'same', says: 'The same motif' },
          { id: 'own', says: 'One of their own' },
        ]}
        onChange={(id) => act(setBetween, { motif: id === 'same' ? null : [plain] })}
      />
      {between === undefined ? null : <OwnMotif lines={between} />}
    </PanelPart>
  );
}

function OwnMotif({ lines }: { readonly lines: readonly string[] }) {
  const act = useAct();
  const [picked, pick] = useState<readonly Cell[]>([]);
  const rows = lines.map(readRow);
  const columns = Math.max(...rows.map((row) => row.length));
  const cells = picked.filter(({ column, row }) => column < columns && row < rows.length);
  const write = (next: readonly (readonly Token[])[]) => act(setBetween, { motif: next.map((row) => writeRow(row)) });
  const tokens = rows.map((row) => row.filter((entry) => typeof entry !== 'string'));
  const change = (to: (token: Token) => Token) =>
    write(
      tokens.map((line, row) => line.map((token, column) => (hasCell(cells, { column, row }) ? to(token) : token))),
    );
  const turn = (by: Turn) => change((token) => ({ ...token, turn: afterTurn(token.turn, by) }));
  const resize = (across: number, down: number) =>
    write(
      Array.from({ length: down }, (_, row) => {
        const line = tokens[row % tokens.length] ?? [];
        return Array.from({ length: across }, (__, column) => line[column % line.length] as Token);
      }),
    );
  return (
    <>
      <MotifGrid rows={rows} picked={cells} onPick={pick} onTurn={turn} label="Places of the blocks between" />
      {cells.length === 0 ? null : <TurnActs onTurn={turn} />}
      {cells.length === 0 ? null : <BlockThere onPlace={(name) => change((token) => ({ ...token, name }))} />}
      <Stepper label="Places across" value={columns} least={1} most={24} onChange={(to) => resize(to, rows.length)} />
      <Stepper label="Places down" value={rows.length} least={1} most={24} onChange={(to) => resize(columns, to)} />
    </>
  );
}
