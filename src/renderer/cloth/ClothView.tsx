import { useWorked } from '../state/hooks.tsx';
import { ClothSidePanel } from './ClothSidePanel.tsx';
import { CuttingChart } from './CuttingChart.tsx';
import { CuttingPlans } from './CuttingPlans.tsx';
import styles from './cloth.module.css';
import { FabricChart } from './FabricChart.tsx';

/** What is bought and what is cut, for all sizes side by side, and how the size looked at is cut from its cloth. */
export default function ClothView() {
  const worked = useWorked();
  return (
    <div className={styles.view}>
      {worked === null ? null : (
        <>
          <FabricChart worked={worked} />
          <CuttingChart worked={worked} />
          <CuttingPlans worked={worked} />
        </>
      )}
      <ClothSidePanel />
    </div>
  );
}
