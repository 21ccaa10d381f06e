import { useEffect, useMemo, useState } from 'react';
import type { Figure as FigureData } from '../../shared/diagrams/figure.ts';
import { inksFor } from '../../shared/diagrams/hatches.ts';
import { quiltFigure } from '../../shared/diagrams/quiltFigure.ts';
import type { WorkedOut, WorkedSize } from '../../shared/workroom/workedOut.ts';
import { Figure } from '../parts/figure/Figure.tsx';
import { useRuler } from '../state/hooks.tsx';
import styles from './SmallQuilt.module.css';

export interface SmallQuiltProps {
  readonly worked: WorkedOut;
  readonly sized: WorkedSize;
  /** A number: pixels for an inch, so that neighbours keep one scale. 'box': as large as its place. */
  readonly fit: number | 'box';
}

/** One size drawn flat and small. Its words stand beside it, so it is not read out. */
export function SmallQuilt({ worked, sized, fit }: SmallQuiltProps) {
  const figure = useFigure(worked.blocks, sized.quilt);
  const { fabrics } = worked.pattern;
  const inks = useMemo(() => inksFor(fabrics), [fabrics]);
  return (
    <span aria-hidden="true" className={styles.quilt}>
      <Figure figure={figure} inks={inks} fit={fit} />
    </span>
  );
}

/** The picture follows once the window has nothing else to do, one small quilt after another: the hand comes first. */
function useFigure(blocks: WorkedOut['blocks'], quilt: WorkedSize['quilt']): FigureData {
  const { units } = useRuler();
  const [figure, setFigure] = useState<FigureData>(() => blank(quilt));
  useEffect(
    () => whenIdle(() => setFigure(quiltFigure(quilt, blocks, { borders: true, edges: 'none', units }))),
    [blocks, quilt, units],
  );
  return figure;
}

/** Cloth of the quilt's own size, so that nothing moves when it is drawn. */
function blank({ finished }: WorkedSize['quilt']): FigureData {
  return { width: finished.width.value, height: finished.height.value, marks: [], alt: '' };
}

/** The latest an idle window is waited for, milliseconds. */
const PATIENCE = 500;

function whenIdle(run: () => void): () => void {
  if (typeof requestIdleCallback === 'undefined') {
    const timer = setTimeout(run, 0);
    return () => clearTimeout(timer);
  }
  const handle = requestIdleCallback(run, { timeout: PATIENCE });
  return () => cancelIdleCallback(handle);
}
