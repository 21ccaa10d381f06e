import { memo } from 'react';
import type { Drawing } from '../../../shared/drawing/drawing.ts';
import type { Piecing } from '../../../shared/piecing/piecing.ts';
import { leavesOf } from '../../../shared/piecing/tree.ts';
import styles from './draw.module.css';
import { patchPath } from './paths.ts';

interface ClothProps {
  readonly drawing: Drawing;
  readonly colourOf: (role: string) => string;
  /** How it is sewn, as soon as that has been found: its units get a stronger outline. */
  readonly piecing: Piecing | undefined;
}

/** The patches in their cloth, and the units found in them. In grid units. */
export const Cloth = memo(function Cloth({ drawing, colourOf, piecing }: ClothProps) {
  const paths = drawing.patches.map((_, i) => patchPath(drawing, i));
  const seams = paths.join('');
  return (
    <g>
      {drawing.patches.map(({ role }, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a patch is its place in the list
        <path key={i} d={paths[i]} fill={colourOf(role)} stroke={colourOf(role)} />
      ))}
      <path className={styles.seamRim} d={seams} />
      <path className={styles.seam} d={seams} />
      {piecing === undefined ? null : <Units drawing={drawing} piecing={piecing} />}
      <rect className={styles.block} width={drawing.width} height={drawing.height} />
    </g>
  );
});

function Units({ drawing, piecing }: { readonly drawing: Drawing; readonly piecing: Piecing }) {
  const scale = drawing.width / piecing.drawing.width;
  const boxes = leavesOf(piecing.root).map(
    ({ box: { x, y, width, height } }) => `M${x} ${y}h${width}v${height}h${-width}Z`,
  );
  return <path className={styles.unitEdge} d={boxes.join('')} transform={`scale(${scale})`} />;
}
