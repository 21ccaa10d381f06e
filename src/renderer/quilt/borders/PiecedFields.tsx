import { useState } from 'react';
import { afterTurn, type Turn, UNTURNED } from '../../../shared/drawing/turn.ts';
import { setBorderPieced } from '../../../shared/pattern/edits/index.ts';
import type { Border } from '../../../shared/pattern/schema.ts';
import { readRow, readToken, type Token, writeRow, writeToken } from '../../../shared/recipe/token.ts';
import { Choice } from '../../parts/Choice.tsx';
import type { Cell } from '../../parts/lattice/lattice.ts';
import { Pick } from '../../parts/Pick.tsx';
import { Stepper } from '../../parts/Stepper.tsx';
import { TurnActs } from '../../parts/turning/TurnActs.tsx';
import { useAct, usePattern } from '../../state/hooks.tsx';
import { BlockThere } from '../motif/BlockThere.tsx';
import { MotifGrid } from '../motif/MotifGrid.tsx';
import { MadeOf } from './MadeOf.tsx';

/** Whether a border is of plain strips or of blocks, and of which. */
export function PiecedFields({ border }: { readonly border: Border }) {
  const act = useAct();
  const { id, pieced } = border;
  return (
    <>
      <MadeOf border={border} />
      {pieced === undefined ? null : <Units border={border} units={pieced.units} />}
      {pieced === undefined ? null : <Corner border={border} units={pieced.units} corner={pieced.corner} />}
      {pieced === undefined ? null : (
        <Choice
          label="The units"
          value={pieced.run ?? 'round'}
          options={[
            { id: 'round', says: 'Run round' },
            { id: 'middle', says: 'Reflect in the middle' },
          ]}
          onChange={(run) => act(setBorderPieced, { border: id, units: pieced.units, run })}
        />
      )}
    </>
  );
}

function Units({ border: { id }, units }: { readonly border: Border; readonly units: string }) {
  const act = useAct();
  const [picked, pick] = useState<readonly Cell[]>([]);
  const row = readRow(units);
  const tokens = row.filter((entry) => typeof entry !== 'string');
  const cells = picked.filter(({ column }) => column < row.length);
  const write = (next: readonly Token[]) => act(setBorderPieced, { border: id, units: writeRow(next) });
  const change = (to: (token: Token) => Token) =>
    write(tokens.map((token, i) => (cells.some(({ column }) => column === i) ? to(token) : token)));
  const turn = (by: Turn) => change((token) => ({ ...token, turn: afterTurn(token.turn, by) }));
  const resize = (count: number) =>
    write(Array.from({ length: count }, (_, i) => tokens[i % tokens.length] ?? { name: 'A', turn: UNTURNED }));
  return (
    <>
      <p className="quiet small">As they lie along the top, from the left; they repeat along every side.</p>
      <MotifGrid rows={[row]} picked={cells} onPick={pick} onTurn={turn} label="Units of the border" />
      {cells.length === 0 ? null : <TurnActs onTurn={turn} />}
      {cells.length === 0 ? null : <BlockThere onPlace={(name) => change((token) => ({ ...token, name }))} />}
      <Stepper label="Units in a repeat" value={row.length} least={1} most={24} onChange={resize} />
    </>
  );
}

const PLAIN = '*';

interface CornerProps {
  readonly border: Border;
  readonly units: string;
  readonly corner: string | undefined;
}

function Corner({ border: { id }, units, corner }: CornerProps) {
  const { blocks } = usePattern();
  const act = useAct();
  const token = corner === undefined ? null : readToken(corner);
  const set = (next: Token | null) =>
    act(setBorderPieced, { border: id, units, corner: next === null ? null : writeToken(next) });
  const turn = (by: Turn) => (token === null ? undefined : set({ ...token, turn: afterTurn(token.turn, by) }));
  return (
    <>
      <Pick
        label="In the corners"
        value={token?.name ?? PLAIN}
        options={[
          { id: PLAIN, name: 'Plain squares' },
          ...blocks.map((block) => ({ id: block.id, name: `${block.id} ${block.name}` })),
        ]}
        onChange={(name) => set(name === PLAIN ? null : { name, turn: token?.turn ?? UNTURNED })}
      />
      {token === null ? null : <TurnActs onTurn={turn} />}
    </>
  );
}
