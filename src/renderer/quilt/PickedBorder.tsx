import type { Quilt } from '../../shared/quilt/quilt.ts';
import { useSelection } from '../state/hooks.tsx';
import styles from './quilt.module.css';

/** The strips of the border that is picked, basted along their edges. */
export function PickedBorder({ quilt }: { readonly quilt: Quilt }) {
  const [selection] = useSelection();
  if (selection.kind !== 'border') return null;
  const { width, height } = quilt.finished;
  return (
    <svg className={styles.marked} viewBox={`0 0 ${width.value} ${height.value}`} aria-hidden="true" focusable="false">
      {quilt.strips
        .filter(({ border }) => border === selection.border)
        .map(({ side, box }) => (
          <g key={side}>
            <rect className={styles.under} {...box} vectorEffect="non-scaling-stroke" />
            <rect className={styles.basted} {...box} vectorEffect="non-scaling-stroke" />
          </g>
        ))}
    </svg>
  );
}
