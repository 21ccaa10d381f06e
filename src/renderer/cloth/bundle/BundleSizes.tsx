import type { WorkedOut } from '../../../shared/workroom/workedOut.ts';
import { SizeCell } from '../charts/SizeCell.tsx';
import { SizeHeads } from '../charts/SizeHeads.tsx';
import styles from '../cloth.module.css';
import { fewestText } from './words.ts';

/** How many bundles every size takes; nothing to compare in a pattern of one size. */
export function BundleSizes({ worked }: { readonly worked: WorkedOut }) {
  if (worked.sizes.length < 2) return null;
  return (
    <section className={styles.section} aria-label="Bundles for every size">
      <table className={styles.chart}>
        <thead>
          <tr>
            <td />
            <SizeHeads worked={worked} />
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="row">Bundles</th>
            {worked.sizes.map((size) => (
              <SizeCell key={size.size.id} size={size}>
                {size.bundle?.bundles ?? 'no number will do'}
                {size.bundle?.fewest ? <span className={styles.under}>{fewestText(size.bundle.fewest)}</span> : null}
              </SizeCell>
            ))}
          </tr>
        </tbody>
      </table>
    </section>
  );
}
