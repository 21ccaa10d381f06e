import type { WorkedOut } from '../../../shared/workroom/workedOut.ts';
import styles from '../cloth.module.css';
import { CuttingChart } from './CuttingChart.tsx';
import { FabricChart } from './FabricChart.tsx';
import { WidthChart } from './WidthChart.tsx';

/** What is bought and what is cut, for all sizes side by side. */
export function Charts({ worked }: { readonly worked: WorkedOut }) {
  return (
    <div className={styles.sheet}>
      <FabricChart worked={worked} />
      <CuttingChart worked={worked} />
      <WidthChart worked={worked} />
    </div>
  );
}
