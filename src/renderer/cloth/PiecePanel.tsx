import type { PieceLine } from '../../shared/cloth/cloth.ts';
import type { WorkedSize } from '../../shared/workroom/workedOut.ts';
import { PanelPart, SidePanel } from '../app/SidePanel.tsx';
import { BackTo } from '../parts/BackTo.tsx';
import { Why } from '../parts/Why.tsx';
import { useCurrentSize, usePattern } from '../state/hooks.tsx';
import { CutSize } from './CutSize.tsx';
import styles from './cloth.module.css';
import { liesWords, type PieceRow } from './pieceRows.ts';

interface PiecePanelProps {
  /** One; two where its print has a direction and it lies both ways. */
  readonly rows: readonly PieceRow[];
  readonly onBack: () => void;
}

/** One lettered piece: what it is for and what is cut of it in every size. */
export function PiecePanel({ rows, onBack }: PiecePanelProps) {
  const { fabrics } = usePattern();
  const current = useCurrentSize();
  const fabric = fabrics.find(({ id }) => id === rows[0]?.fabric);
  return (
    <SidePanel title={`Piece ${rows[0]?.letter ?? ''}`} kind={fabric?.name ?? 'Cloth'}>
      <BackTo onPress={onBack}>All the cloth</BackTo>
      {rows.map((row) => (
        <OneWay key={row.key} row={row} current={current} />
      ))}
    </SidePanel>
  );
}

/** The piece the way it lies on the cloth, in every size. */
function OneWay({ row, current }: { readonly row: PieceRow; readonly current: WorkedSize | null }) {
  const now = row.lines.find(({ size }) => size.size.id === current?.size.id)?.line;
  const lies = now === undefined ? null : liesWords(now);
  return (
    <>
      {now === undefined || current === null ? null : <Uses line={now} name={current.size.name} />}
      <PanelPart title={lies === null ? 'Cut in every size' : `Cut in every size, ${lies}`}>
        <dl className={styles.lines}>
          {row.lines.map(({ size, line }) => (
            <div key={size.size.id}>
              <dt>{size.size.name}</dt>
              <dd>{line === undefined ? 'none' : <Line line={line} />}</dd>
            </div>
          ))}
        </dl>
      </PanelPart>
    </>
  );
}

function Uses({ line, name }: { readonly line: PieceLine; readonly name: string }) {
  return (
    <PanelPart title={`For, in ${name}`}>
      <ul className={styles.lines}>
        {line.use.map(({ words, count }) => (
          <li key={words}>
            {count} {words}
          </li>
        ))}
      </ul>
      {line.spare === 0 ? null : (
        <p className="quiet small">{line.spare} beyond what is sewn: whole batches give them.</p>
      )}
    </PanelPart>
  );
}

function Line({ line }: { readonly line: PieceLine }) {
  return (
    <>
      <Why traced={line.count} /> of <CutSize line={line} />
      {line.subCut === undefined ? null : (
        <span className={styles.under}>
          <Why traced={line.subCut.sets} /> sets, <Why traced={line.subCut.count} /> sub-cuts of{' '}
          <Why traced={line.subCut.length} />
        </span>
      )}
      {line.joined === undefined ? null : (
        <span className={styles.under}>
          from <Why traced={line.joined} /> strips joined end to end
        </span>
      )}
    </>
  );
}
