import type { WorkedSize } from '../../../shared/workroom/workedOut.ts';
import { usePattern, useSelection } from '../../state/hooks.tsx';
import styles from '../quilt.module.css';
import { borderRings } from './ring.ts';

/** The border that is picked, basted along its edges. */
export function PickedBorder({ worked: { quilt, size } }: { readonly worked: WorkedSize }) {
  const [selection] = useSelection();
  const pattern = usePattern();
  if (selection.kind !== 'border') return null;
  const ring = borderRings(pattern, size, quilt).find(({ border }) => border === selection.border);
  if (ring === undefined) return null;
  const { width, height } = quilt.finished;
  return (
    <svg className={styles.marked} viewBox={`0 0 ${width.value} ${height.value}`} aria-hidden="true" focusable="false">
      {[ring.outer, ring.inner].map((box) => (
        <g key={box.x}>
          <rect className={styles.under} {...box} vectorEffect="non-scaling-stroke" />
          <rect className={styles.basted} {...box} vectorEffect="non-scaling-stroke" />
        </g>
      ))}
    </svg>
  );
}
