import type { PieceLine } from '../../shared/cloth/cloth.ts';
import { PanelPart, SidePanel } from '../app/SidePanel.tsx';
import { BackTo } from '../parts/BackTo.tsx';
import { Why } from '../parts/Why.tsx';
import { useCurrentSize, usePattern } from '../state/hooks.tsx';
import { CutSize } from './CutSize.tsx';
import styles from './cloth.module.css';
import type { PieceRow } from './pieceRows.ts';

interface PiecePanelProps {
  readonly row: PieceRow;
  readonly onBack: () => void;
}

/** One lettered piece: what it is for and what is cut of it in every size. */
export function PiecePanel({ row, onBack }: PiecePanelProps) {
  const { fabrics } = usePattern();
  const current = useCurrentSize();
  const fabric = fabrics.find(({ id }) => id === row.fabric);
  const now = row.lines.find(({ size }) => size.size.id === current?.size.id)?.line;
  return (
    <SidePanel title={`Piece ${row.letter}`} kind={fabric?.name ?? 'Cloth'}>
      <BackTo onPress={onBack}>All the cloth</BackTo>
      {now === undefined || current === null ? null : <Uses line={now} name={current.size.name} />}
      <PanelPart title="Cut in every size">
        <dl className={styles.lines}>
          {row.lines.map(({ size, line }) => (
            <div key={size.size.id}>
              <dt>{size.size.name}</dt>
              <dd>{line === undefined ? 'none' : <Line line={line} />}</dd>
            </div>
          ))}
        </dl>
      </PanelPart>
    </SidePanel>
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
