import { useMemo } from 'react';
import type { Fabric } from '../../../shared/pattern/schema.ts';
import { kitIn } from '../../../shared/workroom/clothWays.ts';
import type { WorkedOut, WorkedSize } from '../../../shared/workroom/workedOut.ts';
import { kitCsv } from '../../../shared/writing/kitCsv.ts';
import { kitFileName } from '../../../shared/writing/kitSheet.ts';
import { Button } from '../../parts/Button.tsx';
import { EmptyState } from '../../parts/EmptyState.tsx';
import { giveFile } from '../../parts/giveFile.ts';
import { NumberField } from '../../parts/NumberField.tsx';
import { Why } from '../../parts/Why.tsx';
import { useCurrentSize, useRuler } from '../../state/hooks.tsx';
import styles from '../cloth.module.css';
import { clothStore, useClothState } from '../clothStore.ts';
import { FabricName } from '../FabricName.tsx';
import { KitCosts } from './KitCosts.tsx';
import { KitPages } from './KitPages.tsx';

/** What a shop needs to put kits of one size together: bolt cuts in the order they are made, contents, cost. */
export function Kits({ worked }: { readonly worked: WorkedOut }) {
  const size = useCurrentSize();
  if (size === null) return <EmptyState title="No kits yet">No size can be laid out.</EmptyState>;
  return <KitsOf worked={worked} size={size} />;
}

function KitsOf({ worked, size }: { readonly worked: WorkedOut; readonly size: WorkedSize }) {
  const ruler = useRuler();
  const kits = useClothState((state) => state.kits);
  const sheet = useMemo(() => kitIn(worked, size, kits), [worked, size, kits]);
  const fabricOf = (id: string) => worked.pattern.fabrics.find((fabric) => fabric.id === id) as Fabric;
  const give = () => {
    const text = kitCsv(sheet, worked.pattern, size.size.name);
    giveFile({ name: `${kitFileName(worked.pattern, size.size.name, kits)}.csv`, type: 'text/csv', parts: [text] });
  };
  return (
    <div className={styles.sheet}>
      <section className={styles.section} aria-labelledby="kit-sheet">
        <header className={styles.kitHead}>
          <h2 id="kit-sheet">Kits of {size.size.name}</h2>
          <NumberField
            label="Kits"
            unit="count"
            value={kits}
            least={1}
            most={1000}
            onChange={(many) => clothStore.setState({ kits: many })}
          />
          <Button onPress={give}>Save as a table (CSV)</Button>
        </header>
        <table className={styles.chart}>
          <caption className={styles.caption}>
            Cut from the bolt in this order, the longest first, so that a short bolt is found out early.
          </caption>
          <thead>
            <tr>
              <th scope="col">Fabric</th>
              <th scope="col">For</th>
              <th scope="col" className={styles.sizeCell}>
                Cut for each kit
              </th>
              <th scope="col" className={styles.sizeCell}>
                Cuts
              </th>
              <th scope="col" className={styles.sizeCell}>
                From the bolt, squared up
              </th>
            </tr>
          </thead>
          <tbody>
            {sheet.cloth.map(({ fabric, uses, each, bolt, wide }) => (
              <tr key={`${fabric} ${uses.join(' ')}`}>
                <th scope="row">
                  <FabricName fabric={fabricOf(fabric)} />
                </th>
                <td className={styles.uses}>
                  {uses.join(', ')}
                  {wide === undefined ? null : `, wide cloth of ${ruler.traced(wide)} at least`}
                </td>
                <td className={styles.sizeCell}>
                  <Why traced={each} />
                </td>
                <td className={styles.sizeCell}>{kits}</td>
                <td className={styles.sizeCell}>
                  <Why traced={bolt} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
        {sheet.counted.map(({ fabric, what, each, all }) => (
          <p key={`${fabric} ${what}`}>
            Counted out: <Why traced={each} /> {what}
            {fabric === null ? null : ` of ${fabricOf(fabric).name}`} for each kit, <Why traced={all} /> in all.
          </p>
        ))}
        <KitPages size={size} kits={kits} />
      </section>
      <section className={styles.section} aria-labelledby="kit-contents">
        <h2 id="kit-contents">In each kit</h2>
        <ul className={styles.contents}>
          {sheet.contents.map((line) => (
            <li key={line.what}>
              {ruler.traced(line.amount)} {line.what}
            </li>
          ))}
          <li>
            The pattern “{worked.pattern.title}”, edition {worked.pattern.edition.number}
          </li>
        </ul>
      </section>
      <KitCosts worked={worked} kits={kits} />
    </div>
  );
}
