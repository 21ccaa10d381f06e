import { useMemo } from 'react';
import { backingFigure } from '../../../shared/diagrams/backingFigure.ts';
import type { Ink } from '../../../shared/diagrams/figure.ts';
import { plain } from '../../../shared/measure/traced.ts';
import type { WorkedSize } from '../../../shared/workroom/workedOut.ts';
import { Figure } from '../../parts/figure/Figure.tsx';
import { Why } from '../../parts/Why.tsx';
import { useRuler } from '../../state/hooks.tsx';
import styles from '../cloth.module.css';

/** The backing in its panels, the quilt lying on it; and what the batting measures. */
export function Backing({ size, inks }: { readonly size: WorkedSize; readonly inks: readonly Ink[] }) {
  const { backing, batting } = size.cloth;
  const { finished } = size.quilt;
  const { units } = useRuler();
  const figure = useMemo(() => {
    const drawn = { ...plain(backing), fabric: backing.fabric, seams: backing.seams, panels: backing.panels.value };
    return backingFigure(drawn, plain(finished), units);
  }, [backing, finished, units]);
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
            Buy <Why traced={backing.yards} />
            {backing.cloth === 'wide' ? (
              <>
                {' '}
                of wide cloth, <Why traced={backing.usableWidth} /> at least
              </>
            ) : null}
            .
          </p>
          <p>
            The batting measures at least <Why traced={batting.width} /> × <Why traced={batting.height} />.
          </p>
        </div>
      </div>
    </article>
  );
}
