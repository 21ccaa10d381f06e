import { useMemo } from 'react';
import { inksFor } from '../../shared/diagrams/hatches.ts';
import { quiltFigure } from '../../shared/diagrams/quiltFigure.ts';
import type { WorkedOut, WorkedSize } from '../../shared/workroom/workedOut.ts';
import { Figure } from '../parts/figure/Figure.tsx';
import styles from './SmallQuilt.module.css';

export interface SmallQuiltProps {
  readonly worked: WorkedOut;
  readonly sized: WorkedSize;
  /** A number: pixels for an inch, so that neighbours keep one scale. 'box': as large as its place. */
  readonly fit: number | 'box';
}

/** One size drawn flat and small. Its words stand beside it, so it is not read out. */
export function SmallQuilt({ worked, sized, fit }: SmallQuiltProps) {
  const figure = useMemo(
    () => quiltFigure(sized.quilt, worked.blocks, { borders: true, edges: 'none' }),
    [worked, sized],
  );
  const inks = useMemo(() => inksFor(worked.pattern.fabrics), [worked]);
  return (
    <span aria-hidden="true" className={styles.quilt}>
      <Figure figure={figure} inks={inks} fit={fit} />
    </span>
  );
}
