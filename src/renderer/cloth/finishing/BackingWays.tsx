import { useMemo } from 'react';
import type { BackingWay } from '../../../shared/cloth/backing.ts';
import { backingFigure } from '../../../shared/diagrams/backingFigure.ts';
import type { Ink } from '../../../shared/diagrams/figure.ts';
import { inchesText, sizeText } from '../../../shared/measure/fraction.ts';
import { plain } from '../../../shared/measure/traced.ts';
import type { Finishing } from '../../../shared/workroom/clothWays.ts';
import type { WorkedSize } from '../../../shared/workroom/workedOut.ts';
import { Figure } from '../../parts/figure/Figure.tsx';
import { Why } from '../../parts/Why.tsx';
import styles from '../cloth.module.css';

interface BackingWaysProps {
  readonly size: WorkedSize;
  readonly ways: Finishing;
  readonly inks: readonly Ink[];
}

/** Every way to make the backing, drawn to one scale; the one the pattern prints first of its kind. */
export function BackingWays({ size, ways, inks }: BackingWaysProps) {
  const { backing, batting } = size.cloth;
  const [printed] = ways.backing;
  return (
    <section className={styles.section} aria-labelledby="backing-ways">
      <h2 id="backing-ways">Backing and batting of {size.size.name}</h2>
      <p className="small">
        Both measure <Why traced={backing.width} /> × <Why traced={backing.height} />. {battingWords(ways, batting)}
      </p>
      <ul className={styles.ways}>
        {ways.backing.map((way) => (
          <li key={`${way.cloth} ${way.run}`} className={styles.way} data-chosen={way === printed || undefined}>
            <BackingPicture way={way} size={size} inks={inks} />
            <div>
              <p className={styles.wayName}>{wayName(way)}</p>
              <p>
                <Why traced={way.yards} />
              </p>
              <p className={styles.under}>
                <Why traced={way.panels} /> {way.panels.value === 1 ? 'panel' : 'panels'}{' '}
                <Why traced={way.panelLength} /> long
                {way.seams === 'none' ? ', no seam' : `, seams ${way.seams}`}
              </p>
              {way === printed ? <p className={styles.under}>The pattern prints this one.</p> : null}
            </div>
          </li>
        ))}
      </ul>
    </section>
  );
}

function wayName({ cloth, run }: BackingWay): string {
  return `${cloth === 'wide' ? 'Wide cloth' : 'Cloth as for the top'}, running ${run}`;
}

function battingWords({ batting }: Finishing, { width, height }: WorkedSize['cloth']['batting']): string {
  if (batting !== null) {
    return `Packaged batting of ${sizeText(batting.width, batting.height)} is large enough.`;
  }
  const longest = inchesText(Math.max(width.value, height.value));
  return `No packaged batting is ${longest} long: it is pieced, or bought by the yard.`;
}

function BackingPicture({ way, size, inks }: { way: BackingWay; size: WorkedSize; inks: readonly Ink[] }) {
  const { backing } = size.cloth;
  const { finished } = size.quilt;
  const figure = useMemo(() => {
    const drawn = { ...plain(backing), fabric: backing.fabric, seams: way.seams, panels: way.panels.value };
    return backingFigure(drawn, plain(finished));
  }, [backing, finished, way]);
  return (
    <div className={styles.wayPicture}>
      <Figure figure={figure} inks={inks} />
    </div>
  );
}
