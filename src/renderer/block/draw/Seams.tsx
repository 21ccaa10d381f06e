import { seamCensus } from '../../../shared/piecing/census.ts';
import type { Piecing } from '../../../shared/piecing/piecing.ts';
import { leavesOf } from '../../../shared/piecing/tree.ts';
import { insidePlaces } from '../../../shared/piecing/unitsInside.ts';
import styles from './draw.module.css';

/** How much there is to sew, and what a maker must be able to do. */
export function Seams({ piecing }: { readonly piecing: Piecing }) {
  const { root, units, drawing } = piecing;
  const { full, partial, setIn, curved } = seamCensus(root, units);
  const made = units.reduce((all, { key }) => all + insidePlaces(piecing, key).length, leavesOf(root).length);
  return (
    <div className={styles.seams}>
      <p className={styles.total}>
        {many(made, 'unit')} of {many(units.length, 'kind')}, {many(drawing.patches.length, 'patch', 'es')}
      </p>
      <dl>
        <Count name="Straight seams" count={full} plain />
        <Count name="Partial seams" count={partial} />
        <Count name="Set-in seams" count={setIn} />
        <Count name="Curved seams" count={curved} />
      </dl>
    </div>
  );
}

function many(count: number, one: string, ending = 's'): string {
  return count === 1 ? `1 ${one}` : `${count} ${one}${ending}`;
}

function Count({
  name,
  count,
  plain = false,
}: {
  readonly name: string;
  readonly count: number;
  readonly plain?: boolean;
}) {
  return (
    <div className={styles.seamCount} data-some={(!plain && count > 0) || undefined}>
      <dt>{name}</dt>
      <dd>{count}</dd>
    </div>
  );
}
