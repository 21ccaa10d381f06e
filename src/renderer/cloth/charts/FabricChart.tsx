import type { ReactNode } from 'react';
import { usesTogether } from '../../../shared/cloth/fabricNeeds.ts';
import type { Fabric } from '../../../shared/pattern/schema.ts';
import type { WorkedOut, WorkedSize } from '../../../shared/workroom/workedOut.ts';
import { Why } from '../../parts/Why.tsx';
import styles from '../cloth.module.css';
import { FabricName } from '../FabricName.tsx';
import { SizeCell } from './SizeCell.tsx';
import { SizeHeads } from './SizeHeads.tsx';

/** What a maker buys, for every size. */
export function FabricChart({ worked }: { readonly worked: WorkedOut }) {
  const { fabrics, backing } = worked.pattern;
  const used = fabrics.filter(({ id }) =>
    worked.sizes.some(({ cloth }) => cloth.needs.some(({ fabric }) => fabric === id)),
  );
  const backed = fabrics.find(({ id }) => id === backing.fabric);
  return (
    <section className={styles.section} aria-labelledby="fabric-requirements">
      <h2 id="fabric-requirements">Fabric requirements</h2>
      <table className={styles.chart}>
        <thead>
          <tr>
            <th scope="col">Fabric</th>
            <th scope="col">For</th>
            <SizeHeads worked={worked} />
          </tr>
        </thead>
        <tbody>
          {used.map((fabric) => (
            <NeedRow key={fabric.id} worked={worked} fabric={fabric} />
          ))}
          {backed === undefined ? null : <BackingRow worked={worked} fabric={backed} />}
          <BattingRow worked={worked} />
        </tbody>
      </table>
    </section>
  );
}

function NeedRow({ worked, fabric }: { readonly worked: WorkedOut; readonly fabric: Fabric }) {
  const needOf = (size: WorkedSize) => size.cloth.needs.find((need) => need.fabric === fabric.id);
  const uses = usesTogether(worked.sizes.map(needOf));
  return (
    <ChartRow worked={worked} name={<FabricName fabric={fabric} />} uses={uses.join(', ')}>
      {(size) => {
        const need = needOf(size);
        return need === undefined ? 'none' : <Why traced={need.yards} />;
      }}
    </ChartRow>
  );
}

function BackingRow({ worked, fabric }: { readonly worked: WorkedOut; readonly fabric: Fabric }) {
  return (
    <ChartRow worked={worked} name={<FabricName fabric={fabric} />} uses="backing">
      {({ cloth: { backing } }) => (
        <>
          <Why traced={backing.yards} />
          <span className={styles.under}>
            {backing.seams === 'none' ? (
              'in one piece'
            ) : (
              <>
                <Why traced={backing.panels} /> panels, seams {backing.seams}
              </>
            )}
          </span>
        </>
      )}
    </ChartRow>
  );
}

function BattingRow({ worked }: { readonly worked: WorkedOut }) {
  return (
    <ChartRow worked={worked} name="Batting" uses="at least">
      {({ cloth: { batting } }) => (
        <>
          <Why traced={batting.width} /> × <Why traced={batting.height} />
        </>
      )}
    </ChartRow>
  );
}

interface ChartRowProps {
  readonly worked: WorkedOut;
  readonly name: ReactNode;
  readonly uses: string;
  readonly children: (size: WorkedSize) => ReactNode;
}

function ChartRow({ worked, name, uses, children }: ChartRowProps) {
  return (
    <tr>
      <th scope="row">{name}</th>
      <td className={styles.uses}>{uses}</td>
      {worked.sizes.map((size) => (
        <SizeCell key={size.size.id} size={size}>
          {children(size)}
        </SizeCell>
      ))}
    </tr>
  );
}
