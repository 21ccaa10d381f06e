import { useMemo } from 'react';
import type { Figure as FigureData, Ink } from '../../../shared/diagrams/figure.ts';
import { boxOutline, plainArea } from '../../../shared/diagrams/marks.ts';
import { Figure } from '../../parts/figure/Figure.tsx';

/** The hatch that stands for a fabric where the pattern is printed without colour. */
export function HatchSwatch({ ink }: { readonly ink: Ink | undefined }) {
  const figure = useMemo<FigureData>(() => {
    const box = { x: 0, y: 0, width: 4, height: 1.4 };
    const marks = [plainArea([boxOutline(box)], ink?.fabric ?? null, 'full', 'patch')];
    return { width: box.width, height: box.height, marks, alt: 'Its hatch' };
  }, [ink]);
  return <Figure figure={figure} inks={ink === undefined ? [] : [ink]} manner="plain" fit={18} />;
}
