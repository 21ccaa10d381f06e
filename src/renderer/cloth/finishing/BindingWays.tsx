import type { BindingNeed } from '../../../shared/cloth/cloth.ts';
import { setBindingCut } from '../../../shared/pattern/edits/index.ts';
import type { Finishing } from '../../../shared/workroom/clothWays.ts';
import type { WorkedSize } from '../../../shared/workroom/workedOut.ts';
import { Why } from '../../parts/Why.tsx';
import { useAct } from '../../state/hooks.tsx';
import styles from '../cloth.module.css';
import { UseThis } from './UseThis.tsx';

interface Told {
  readonly name: string;
  readonly use: string;
  readonly goodFor: string;
}

const TOLD: Readonly<Record<BindingNeed['cut'], Told>> = {
  straight: { name: 'Straight', use: 'straight binding', goodFor: 'straight sides' },
  bias: { name: 'On the bias, in strips', use: 'bias strips', goodFor: 'curved edges, rounded corners' },
  continuous: {
    name: 'On the bias, in one strip',
    use: 'one continuous bias strip',
    goodFor: 'curved edges, with fewer seams to pin',
  },
};

/** Straight and bias binding side by side; a press chooses, in every size. */
export function BindingWays({ size, ways }: { readonly size: WorkedSize; readonly ways: Finishing }) {
  const act = useAct();
  const { binding } = size.cloth;
  return (
    <section className={styles.section} aria-labelledby="binding-ways">
      <h2 id="binding-ways">Binding of {size.size.name}</h2>
      <p className="small">
        <Why traced={binding.length} /> of binding <Why traced={binding.stripWidth} /> wide are needed.
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
            <th scope="col">In the pattern</th>
          </tr>
        </thead>
        <tbody>
          {ways.binding.map((way) => (
            <tr key={way.cut}>
              <th scope="row">{TOLD[way.cut].name}</th>
              <td>
                <CutFrom way={way} />
              </td>
              <td className={styles.uses}>{TOLD[way.cut].goodFor}</td>
              <td className={styles.sizeCell}>
                <Why traced={way.yards} />
              </td>
              <td>
                <UseThis
                  what={TOLD[way.cut].use}
                  chosen={way.cut === binding.cut}
                  onUse={() => act(setBindingCut, { cut: way.cut })}
                />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function CutFrom({ way: { strips, from } }: { readonly way: BindingNeed }) {
  if (from === undefined) {
    return (
      <>
        <Why traced={strips} /> strips across the cloth
      </>
    );
  }
  const square = from.width.value === from.height.value;
  return (
    <>
      <Why traced={strips} /> {strips.value === 1 ? 'strip' : 'strips'} from{' '}
      {from.pieces.value === 1 ? 'a piece' : <Why traced={from.pieces}>{`${from.pieces.value} pieces`}</Why>} of{' '}
      {square ? null : (
        <>
          <Why traced={from.width} /> ×{' '}
        </>
      )}
      <Why traced={from.height} />
      {square ? ' square' : null}
    </>
  );
}
