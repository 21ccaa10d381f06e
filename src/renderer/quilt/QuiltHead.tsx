import { ToggleButton, ToggleButtonGroup } from 'react-aria-components';
import { inchesText } from '../../shared/measure/fraction.ts';
import { Why } from '../parts/Why.tsx';
import { useCompare, useCurrentSize } from '../state/hooks.tsx';
import { OVERS, type Over } from './look.ts';
import styles from './quilt.module.css';
import { quiltStore, useQuiltState } from './quiltStore.ts';
import { useUnlaid } from './Unlaid.tsx';

/** What the size measures, and what is shown over its cloth. */
export function QuiltHead() {
  const over = useQuiltState((state) => state.over);
  return (
    <header className={styles.head}>
      <Measures />
      <ToggleButtonGroup
        className={styles.overs ?? ''}
        aria-label="Shown on the quilt"
        selectionMode="multiple"
        selectedKeys={[...over]}
        onSelectionChange={(keys) => quiltStore.setState({ over: new Set([...keys] as Over[]) })}
      >
        {OVERS.map(({ id, says }) => (
          <ToggleButton key={id} id={id} className={styles.over ?? ''}>
            {says}
          </ToggleButton>
        ))}
      </ToggleButtonGroup>
    </header>
  );
}

function Measures() {
  const worked = useCurrentSize();
  const compare = useCompare();
  const unlaid = useUnlaid();
  if (compare) return <h2>All sizes, to one scale</h2>;
  if (worked === null || unlaid !== null) return <span />;
  const { size, quilt } = worked;
  return (
    <div className={styles.measures}>
      <h2>{size.name}</h2>
      <p className={styles.facts}>
        <Why traced={quilt.finished.width} /> × <Why traced={quilt.finished.height} /> finished, {size.across} ×{' '}
        {size.down} blocks of {inchesText(size.block)}
      </p>
    </div>
  );
}
