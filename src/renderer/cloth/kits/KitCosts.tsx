import { costIn } from '../../../shared/workroom/clothWays.ts';
import type { WorkedOut } from '../../../shared/workroom/workedOut.ts';
import { Why } from '../../parts/Why.tsx';
import { SizeCell } from '../charts/SizeCell.tsx';
import { SizeHeads } from '../charts/SizeHeads.tsx';
import styles from '../cloth.module.css';
import { moneyText } from '../money.ts';

/** What the cloth of every size costs, and so many kits of it, as far as prices are known. */
export function KitCosts({ worked, kits }: { readonly worked: WorkedOut; readonly kits: number }) {
  const costs = worked.sizes.map((size) => ({ size, cost: costIn(worked, size) }));
  const known = costs.some(({ cost }) => cost !== null);
  return (
    <section className={styles.section} aria-labelledby="kit-costs">
      <h2 id="kit-costs">What the cloth costs</h2>
      {known ? (
        <table className={styles.chart}>
          <thead>
            <tr>
              <td />
              <SizeHeads worked={worked} />
            </tr>
          </thead>
          <tbody>
            <tr>
              <th scope="row">One kit</th>
              {costs.map(({ size, cost }) => (
                <SizeCell key={size.size.id} size={size}>
                  {cost === null ? 'no price' : <Why traced={cost.total}>{moneyText(cost.total.value)}</Why>}
                  {cost === null || cost.whole ? null : <span className={styles.under}>not all prices known</span>}
                </SizeCell>
              ))}
            </tr>
            <tr>
              <th scope="row">{kits === 1 ? '1 kit' : `${kits} kits`}</th>
              {costs.map(({ size, cost }) => (
                <SizeCell key={size.size.id} size={size}>
                  {cost === null ? 'no price' : moneyText(cost.total.value * kits)}
                </SizeCell>
              ))}
            </tr>
          </tbody>
        </table>
      ) : (
        <p className="quiet">
          Give a fabric its price (choose it in any chart), and the cost of each size stands here.
        </p>
      )}
      <p className="quiet small">Batting, thread and packing are not among it.</p>
    </section>
  );
}
