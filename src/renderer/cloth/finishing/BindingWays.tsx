import type { Finishing } from '../../../shared/workroom/clothWays.ts';
import type { WorkedSize } from '../../../shared/workroom/workedOut.ts';
import { Why } from '../../parts/Why.tsx';
import styles from '../cloth.module.css';

/** Straight and bias binding side by side. */
export function BindingWays({ size, ways }: { readonly size: WorkedSize; readonly ways: Finishing }) {
  const { straight, bias } = ways.binding;
  return (
    <section className={styles.section} aria-labelledby="binding-ways">
      <h2 id="binding-ways">Binding of {size.size.name}</h2>
      <p className="small">
        <Why traced={straight.length} /> of binding <Why traced={size.cloth.binding.stripWidth} /> wide are needed.
      </p>
      <table className={styles.chart}>
        <thead>
          <tr>
            <th scope="col">Cut</th>
            <th scope="col">From</th>
            <th scope="col">Good for</th>
            <th scope="col" className={styles.sizeCell}>
              By itself
            </th>
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="row">
              Straight
              <span className={styles.under}>The pattern prints this one.</span>
            </th>
            <td>
              <Why traced={straight.strips} /> strips across the cloth
            </td>
            <td className={styles.uses}>straight sides</td>
            <td className={styles.sizeCell}>
              <Why traced={straight.yards} />
            </td>
          </tr>
          <tr>
            <th scope="row">On the bias, in one strip</th>
            <td>
              <Why traced={bias.squares} /> {bias.squares.value === 1 ? 'square' : 'squares'} of{' '}
              <Why traced={bias.square} />
            </td>
            <td className={styles.uses}>curved edges and rounded corners</td>
            <td className={styles.sizeCell}>
              <Why traced={bias.yards} />
            </td>
          </tr>
        </tbody>
      </table>
    </section>
  );
}
