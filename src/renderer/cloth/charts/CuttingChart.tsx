import { Button } from 'react-aria-components';
import type { PieceLine } from '../../../shared/cloth/cloth.ts';
import type { Fabric } from '../../../shared/pattern/schema.ts';
import type { WorkedOut } from '../../../shared/workroom/workedOut.ts';
import { Why } from '../../parts/Why.tsx';
import { useSelection } from '../../state/hooks.tsx';
import { CutSize } from '../CutSize.tsx';
import styles from '../cloth.module.css';
import { FabricName } from '../FabricName.tsx';
import { liesWords, type PieceRow, pieceRows, usesOf } from '../pieceRows.ts';
import { SizeCell } from './SizeCell.tsx';
import { SizeHeads } from './SizeHeads.tsx';

/** Every piece by its letter: how many and how large, in every size, fabric by fabric. */
export function CuttingChart({ worked }: { readonly worked: WorkedOut }) {
  const rows = pieceRows(worked);
  const groups = worked.pattern.fabrics.flatMap((fabric) => {
    const own = rows.filter((row) => row.fabric === fabric.id);
    return own.length === 0 ? [] : [{ fabric, own }];
  });
  return (
    <section className={styles.section} aria-labelledby="cutting-chart">
      <h2 id="cutting-chart">Cutting chart</h2>
      <table className={styles.chart}>
        <thead>
          <tr>
            <th scope="col">Piece</th>
            <th scope="col">For</th>
            <SizeHeads worked={worked} />
          </tr>
        </thead>
        {groups.map(({ fabric, own }) => (
          <FabricGroup key={fabric.id} fabric={fabric} rows={own} columns={2 + worked.sizes.length} />
        ))}
      </table>
    </section>
  );
}

interface FabricGroupProps {
  readonly fabric: Fabric;
  readonly rows: readonly PieceRow[];
  readonly columns: number;
}

function FabricGroup({ fabric, rows, columns }: FabricGroupProps) {
  return (
    <tbody>
      <tr className={styles.group}>
        <th scope="rowgroup" colSpan={columns}>
          <FabricName fabric={fabric} />
        </th>
      </tr>
      {rows.map((row) => (
        <PieceRowCells key={row.key} row={row} />
      ))}
    </tbody>
  );
}

function PieceRowCells({ row }: { readonly row: PieceRow }) {
  const [selection, select] = useSelection();
  const chosen = selection.kind === 'piece' && selection.letter === row.letter;
  return (
    <tr className={styles.piece} data-chosen={chosen}>
      <th scope="row">
        <Button
          className={styles.letter ?? ''}
          aria-label={`Piece ${row.letter}`}
          onPress={() => select({ kind: 'piece', letter: row.letter })}
        >
          {row.letter}
        </Button>
      </th>
      <td className={styles.uses}>{usesOf(row).join('; ')}</td>
      {row.lines.map(({ size, line }) => (
        <SizeCell key={size.size.id} size={size}>
          {line === undefined ? <span className="quiet">none</span> : <Count line={line} />}
        </SizeCell>
      ))}
    </tr>
  );
}

function Count({ line }: { readonly line: PieceLine }) {
  const lies = liesWords(line);
  return (
    <>
      <Why traced={line.count} />
      <span className={styles.under}>
        <CutSize line={line} />
      </span>
      {lies === null ? null : <span className={styles.under}>{lies}</span>}
    </>
  );
}
