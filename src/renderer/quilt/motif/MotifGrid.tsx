import { useMemo } from 'react';
import { blockFigure } from '../../../shared/diagrams/blockFigure.ts';
import { inksFor } from '../../../shared/diagrams/hatches.ts';
import type { Turn } from '../../../shared/drawing/turn.ts';
import type { Token } from '../../../shared/recipe/token.ts';
import { writeToken } from '../../../shared/recipe/token.ts';
import { Figure } from '../../parts/figure/Figure.tsx';
import { LatticePicker } from '../../parts/lattice/LatticePicker.tsx';
import { allCells, type Cell, evenLattice } from '../../parts/lattice/lattice.ts';
import { turnOfKey, turnWords } from '../../parts/turning/turnWords.ts';
import { usePattern, useWorked } from '../../state/hooks.tsx';
import styles from '../quilt.module.css';

interface MotifGridProps {
  readonly rows: readonly (readonly (Token | string)[])[];
  readonly picked: readonly Cell[];
  readonly onPick: (cells: readonly Cell[]) => void;
  readonly onTurn: (by: Turn) => void;
  /** What it is, for those who listen. */
  readonly label: string;
}

/** The motif drawn small; its places can be picked, turned and mirrored like those of the quilt. */
export function MotifGrid({ rows, picked, onPick, onTurn, label }: MotifGridProps) {
  const columns = Math.max(...rows.map((row) => row.length));
  const lattice = evenLattice({ x: 0, y: 0 }, columns, rows.length, 1, 1);
  const key = (pressed: string) => {
    const by = turnOfKey(pressed);
    if (by === null || picked.length === 0) return false;
    onTurn(by);
    return true;
  };
  const describe = ({ column, row }: Cell) => tokenWords(rows[row]?.[column], `row ${row + 1}, column ${column + 1}`);
  return (
    <div className={styles.motif} style={{ gridTemplateColumns: `repeat(${columns}, 1fr)`, maxWidth: columns * 84 }}>
      {allCells(lattice).map((cell) => (
        <MotifCell key={`${cell.column} ${cell.row}`} token={rows[cell.row]?.[cell.column] ?? ''} />
      ))}
      <LatticePicker
        lattice={lattice}
        width={columns}
        height={rows.length}
        label={`${label}: arrow keys move, R turns, M mirrors`}
        describe={describe}
        picked={picked}
        onPick={onPick}
        onKey={key}
      />
    </div>
  );
}

function tokenWords(token: Token | string | undefined, place: string): string {
  if (token === undefined || typeof token === 'string') return place;
  return [`Block ${token.name}`, place, turnWords(token.turn)].filter((part) => part !== '').join(', ');
}

function MotifCell({ token }: { readonly token: Token | string }) {
  const { fabrics } = usePattern();
  const worked = useWorked();
  const name = typeof token === 'string' ? '' : token.name;
  const written = typeof token === 'string' ? token : writeToken(token);
  const block = worked?.blocks.find(({ id }) => id === name);
  const turn = typeof token === 'string' ? undefined : token.turn;
  // biome-ignore lint/correctness/useExhaustiveDependencies: the turn is written in the token's text
  const figure = useMemo(
    () =>
      block === undefined || turn === undefined
        ? null
        : blockFigure(block.piecing, 1, block.fabricOf, { turn, name: `Block ${name}` }),
    [block, written],
  );
  const inks = useMemo(() => inksFor(fabrics), [fabrics]);
  return (
    <div className={styles.motifCell}>
      {figure === null ? written : <Figure figure={figure} inks={inks} fit="width" />}
      <span className={styles.motifLetter} aria-hidden="true">
        {name}
      </span>
    </div>
  );
}
