import { useMemo } from 'react';
import { inksFor } from '../../../shared/diagrams/hatches.ts';
import { quiltFigure } from '../../../shared/diagrams/quiltFigure.ts';
import type { WorkedOut, WorkedSize } from '../../../shared/workroom/workedOut.ts';
import { FindingLine } from '../../parts/FindingLine.tsx';
import { Figure } from '../../parts/figure/Figure.tsx';
import { useCurrentSize, useRuler } from '../../state/hooks.tsx';
import styles from '../cloth.module.css';
import own from './fabrics.module.css';
import { Meetings } from './Meetings.tsx';
import { ValueChart } from './ValueChart.tsx';

/** The fabrics with and without their colour: is each as light or dark as it is said to be, and do neighbours stay apart? */
export function Fabrics({ worked }: { readonly worked: WorkedOut }) {
  const size = useCurrentSize();
  const findings = worked.findings.filter(({ where }) => where.path.startsWith('fabrics['));
  return (
    <div className={styles.sheet}>
      {size === null ? null : <ThreeQuilts worked={worked} size={size} />}
      {findings.length === 0 ? null : (
        <section className={styles.section} aria-label="What to look at again">
          {findings.map((finding) => (
            <FindingLine key={`${finding.where.path} ${finding.what}`} finding={finding} />
          ))}
        </section>
      )}
      <ValueChart worked={worked} />
      <Meetings worked={worked} />
    </div>
  );
}

const MANNERS = [
  { says: 'In colour', manner: 'colour', grey: false },
  { says: 'Without its colour', manner: 'colour', grey: true },
  { says: 'In black and white, as it is printed', manner: 'plain', grey: false },
] as const;

function ThreeQuilts({ worked, size }: { readonly worked: WorkedOut; readonly size: WorkedSize }) {
  const { units } = useRuler();
  const figure = useMemo(
    () => quiltFigure(size.quilt, worked.blocks, { borders: true, name: size.size.name, units }),
    [size, worked, units],
  );
  const inks = useMemo(() => inksFor(worked.pattern.fabrics), [worked.pattern.fabrics]);
  return (
    <section className={own.three} aria-label="The quilt with and without its colour">
      {MANNERS.map(({ says, manner, grey }) => (
        <figure key={says} className={own.quilt}>
          <div className={own.picture} data-grey={grey || undefined}>
            <Figure figure={figure} inks={inks} manner={manner} alt={`${size.size.name}, ${says.toLowerCase()}`} />
          </div>
          <figcaption>{says}</figcaption>
        </figure>
      ))}
    </section>
  );
}
