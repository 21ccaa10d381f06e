import type { Units } from '../measure/metric.ts';
import type { Quilt } from '../quilt/quilt.ts';
import type { FigureBlock } from './blockCloth.ts';
import type { Figure } from './figure.ts';
import { pieceLine } from './quiltCloth.ts';
import { blockLetters, quiltFigure, turnMarks } from './quiltFigure.ts';

/** Which block stands where and how it lies: letters and arrows over the quilt in pale cloth. */
export function quiltLayoutFigure(quilt: Quilt, blocks: readonly FigureBlock[], name?: string, units?: Units): Figure {
  const under = quiltFigure(quilt, blocks, {
    borders: true,
    edges: 'none',
    tone: 'pale',
    ...(name === undefined ? {} : { name }),
    ...(units === undefined ? {} : { units }),
  });
  const outlines = [...quilt.blocks, ...quilt.patches, ...quilt.triangles, ...quilt.strips].map((leaf) =>
    pieceLine(leaf),
  );
  const marks = [...under.marks, ...outlines, ...turnMarks(quilt, true), ...blockLetters(quilt, true)];
  return { ...under, marks, alt: `${under.alt} Each block has its letter and an arrow to where its top lies.` };
}
