import { ToggleButton, ToggleButtonGroup } from 'react-aria-components';
import { Why } from '../parts/Why.tsx';
import { useCompare, useCurrentSize, useRuler, useStudio } from '../state/hooks.tsx';
import { BedPick } from './bed/BedPick.tsx';
import { toggleBrush } from './commands.ts';
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
      <div className={styles.tools}>
        <PaintToggle />
        <BedPick />
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
      </div>
    </header>
  );
}

function PaintToggle() {
  const studio = useStudio();
  const compare = useCompare();
  const painting = useQuiltState((state) => state.brush !== null);
  if (compare) return null;
  return (
    <ToggleButton className={styles.over ?? ''} isSelected={painting} onChange={() => toggleBrush(studio)}>
      Paint
    </ToggleButton>
  );
}

function Measures() {
  const worked = useCurrentSize();
  const compare = useCompare();
  const unlaid = useUnlaid();
  const ruler = useRuler();
  if (compare) return <h2>All sizes, to one scale</h2>;
  if (worked === null || unlaid !== null) return <span />;
  const { size, quilt } = worked;
  return (
    <div className={styles.measures}>
      <h2>{size.name}</h2>
      <p className={styles.facts}>
        <Why traced={quilt.finished.width} /> × <Why traced={quilt.finished.height} /> finished, {size.across} ×{' '}
        {size.down} blocks of {ruler.length(size.block)}
      </p>
    </div>
  );
}
