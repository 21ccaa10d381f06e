import { useMemo } from 'react';
import type { FabricNeed } from '../../shared/cloth/cloth.ts';
import { backingFigure } from '../../shared/diagrams/backingFigure.ts';
import { cuttingFigure } from '../../shared/diagrams/cuttingFigure.ts';
import type { Ink } from '../../shared/diagrams/figure.ts';
import { inksFor } from '../../shared/diagrams/hatches.ts';
import { plain } from '../../shared/measure/traced.ts';
import type { Fabric } from '../../shared/pattern/schema.ts';
import type { WorkedOut, WorkedSize } from '../../shared/workroom/workedOut.ts';
import { Figure } from '../parts/figure/Figure.tsx';
import { Mark } from '../parts/Mark.tsx';
import { Why } from '../parts/Why.tsx';
import { useCurrentSize } from '../state/hooks.tsx';
import styles from './cloth.module.css';
import { FabricName } from './FabricName.tsx';
import { proofWords } from './proof.ts';

/** How each fabric of the size looked at is cut, strip by strip, then its binding and backing. */
export function CuttingPlans({ worked }: { readonly worked: WorkedOut }) {
  const size = useCurrentSize();
  const inks = useMemo(() => inksFor(worked.pattern.fabrics), [worked.pattern.fabrics]);
  if (size === null) return null;
  return (
    <section className={styles.section} aria-labelledby="cutting-plans">
      <h2 id="cutting-plans">How the cloth is cut for {size.size.name}</h2>
      {worked.pattern.fabrics.map((fabric) => {
        const need = size.cloth.needs.find((one) => one.fabric === fabric.id);
        return need === undefined ? null : <Plan key={fabric.id} fabric={fabric} need={need} inks={inks} />;
      })}
      <Binding size={size} />
      <Backing size={size} inks={inks} />
    </section>
  );
}

interface PlanProps {
  readonly fabric: Fabric;
  readonly need: FabricNeed;
  readonly inks: readonly Ink[];
}

function Plan({ fabric, need, inks }: PlanProps) {
  const { plan } = need;
  const figure = useMemo(() => cuttingFigure(plan.fabric, plan.width, plan.strips), [plan]);
  return (
    <article className={styles.plan}>
      <header className={styles.planHead}>
        <h3>
          <FabricName fabric={fabric} />
        </h3>
        <p className={styles.proof}>
          <Mark of={need.least ? 'fits' : 'note'} />
          {proofWords(need)}
        </p>
        <p className={styles.buy}>
          Buy <Why traced={need.yards} />
        </p>
      </header>
      <Figure figure={figure} inks={inks} fit="width" />
    </article>
  );
}

function Binding({ size }: { readonly size: WorkedSize }) {
  const { binding } = size.cloth;
  return (
    <article className={styles.plan}>
      <h3>Binding</h3>
      <p>
        Cut <Why traced={binding.strips} /> strips <Why traced={binding.stripWidth} /> wide across the cloth and join
        them end to end: <Why traced={binding.length} /> are needed.
      </p>
    </article>
  );
}

function Backing({ size, inks }: { readonly size: WorkedSize; readonly inks: readonly Ink[] }) {
  const { backing, batting } = size.cloth;
  const { finished } = size.quilt;
  const figure = useMemo(() => {
    const drawn = { ...plain(backing), fabric: backing.fabric, seams: backing.seams, panels: backing.panels.value };
    return backingFigure(drawn, plain(finished));
  }, [backing, finished]);
  return (
    <article className={styles.plan}>
      <h3>Backing and batting</h3>
      <div className={styles.backing}>
        <div className={styles.backingPicture}>
          <Figure figure={figure} inks={inks} />
        </div>
        <div>
          <p>
            The backing measures <Why traced={backing.width} /> × <Why traced={backing.height} />
            {backing.seams === 'none' ? (
              ', in one piece.'
            ) : (
              <>
                : <Why traced={backing.panels} /> panels <Why traced={backing.panelLength} /> long, their seams running{' '}
                {backing.seams}.
              </>
            )}{' '}
            Buy <Why traced={backing.yards} />.
          </p>
          <p>
            The batting measures at least <Why traced={batting.width} /> × <Why traced={batting.height} />.
          </p>
        </div>
      </div>
    </article>
  );
}
