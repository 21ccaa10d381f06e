import { isLeaf } from '../../../shared/piecing/tree.ts';
import { distinctJoins, turnedBlocks } from '../../../shared/quilt/joins.ts';
import { centreOf, linesIn } from '../../../shared/quilt/lines.ts';
import type { Quilt } from '../../../shared/quilt/quilt.ts';
import { PanelPart } from '../../app/SidePanel.tsx';
import { turnWords } from '../../parts/turning/turnWords.ts';
import { useCurrentSize, usePattern, useWorked } from '../../state/hooks.tsx';
import styles from '../quilt.module.css';

/** What there is to sew in the size looked at: rows, blocks by the way they lie, joins and points. */
export function CountsPart() {
  const { setting } = usePattern();
  const way = useWorked()?.assembly.way;
  const worked = useCurrentSize();
  if (worked === null) return null;
  const { size, quilt, points } = worked;
  const joins = distinctJoins(quilt, setting);
  return (
    <PanelPart title={`To sew in ${size.name}`}>
      <dl className={styles.sums}>
        <Count name={NAMES[way ?? 'rows']} count={rowsOf(quilt, way === 'columns')} />
        {turnedBlocks(quilt).map(({ block, turn, count }) => {
          const lies = turnWords(turn);
          return <Count key={`${block} ${lies}`} name={`${block}, ${lies || 'as drawn'}`} count={count} />;
        })}
        {joins === 0 ? null : <Count name="Different joins of two blocks" count={joins} />}
        <Count name="Points to match" count={points} />
      </dl>
    </PanelPart>
  );
}

function Count({ name, count }: { readonly name: string; readonly count: number }) {
  return (
    <div className={styles.sum}>
      <dt>{name}</dt>
      <dd className="figures">{count.toLocaleString('en')}</dd>
    </div>
  );
}

const NAMES = { rows: 'Rows', columns: 'Columns', 'diagonal rows': 'Diagonal rows' } as const;

function rowsOf({ root }: Quilt, inColumns: boolean): number {
  const { part } = centreOf(root);
  if (isLeaf(part) && part.kind === 'on-point') return part.rows.filter(({ kind }) => kind === 'blocks').length;
  return linesIn(root, inColumns);
}
