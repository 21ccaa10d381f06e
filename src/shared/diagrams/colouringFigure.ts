import type { Units } from '../measure/metric.ts';
import type { Quilt } from '../quilt/quilt.ts';
import type { FigureBlock } from './blockCloth.ts';
import type { Figure } from './figure.ts';
import { boxLine } from './marks.ts';
import { gatherCloth } from './quiltCloth.ts';
import { quiltAlt } from './quiltFigure.ts';

/** The quilt as outlines only, for a maker to colour. */
export function colouringFigure(quilt: Quilt, blocks: readonly FigureBlock[], units: Units = 'inches'): Figure {
  const gathering = gatherCloth(blocks);
  for (const leaf of [...quilt.blocks, ...quilt.patches, ...quilt.triangles, ...quilt.strips]) gathering.add(leaf);
  const [width, height] = [quilt.finished.width.value, quilt.finished.height.value];
  const outlines = [...gathering.cloth.values()].flat();
  return {
    width,
    height,
    marks: [
      { kind: 'area', outlines, fabric: null, tone: 'full', edge: 'patch' },
      boxLine({ x: 0, y: 0, width, height }, 'unit'),
    ],
    alt: `${quiltAlt(quilt, undefined, units)} Outlines to colour.`,
  };
}
