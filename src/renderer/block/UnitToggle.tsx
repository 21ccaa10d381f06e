import { useEffect, useMemo, useRef } from 'react';
import { ToggleButton } from 'react-aria-components';
import { inksFor } from '../../shared/diagrams/hatches.ts';
import { unitFigure } from '../../shared/diagrams/unitFigure.ts';
import { same } from '../../shared/measure/inches.ts';
import type { Ruler } from '../../shared/measure/ruler.ts';
import type { TracedSize } from '../../shared/measure/traced.ts';
import { unitName } from '../../shared/piecing/unitNames.ts';
import { finishedSize } from '../../shared/workroom/finishedSize.ts';
import type { SizedUnit, WorkedBlock } from '../../shared/workroom/workedOut.ts';
import { Figure } from '../parts/figure/Figure.tsx';
import { usePattern, useRuler, useSelection } from '../state/hooks.tsx';
import styles from './block.module.css';

interface UnitToggleProps {
  readonly number: number;
  readonly made: SizedUnit;
  readonly block: WorkedBlock;
  readonly grid: number;
  /** Whether what is picked on the block lies in such a unit. */
  readonly holds: boolean;
}

/** A unit with its picture, name and finished size; pressed, it is what the panel is about. */
export function UnitToggle({ number, made, block, grid, holds }: UnitToggleProps) {
  const { fabrics } = usePattern();
  const ruler = useRuler();
  const [selection, select] = useSelection();
  const { unit } = made;
  const figure = useMemo(() => unitFigure(unit, grid, block.fabricOf), [unit, grid, block]);
  const inks = useMemo(() => inksFor(fabrics), [fabrics]);
  const chosen = selection.kind === 'unit' && selection.block === block.id && selection.unit === unit.key;
  const here = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (holds) here.current?.scrollIntoView({ block: 'nearest' });
  }, [holds]);
  return (
    <ToggleButton
      ref={here}
      className={styles.unitPick ?? ''}
      data-holds={holds || undefined}
      isSelected={chosen}
      onChange={(on) =>
        select(on ? { kind: 'unit', block: block.id, unit: unit.key } : { kind: 'block', block: block.id })
      }
    >
      <span className={styles.unitPicture}>
        <Figure figure={figure} inks={inks} />
      </span>
      <span className={styles.unitWords}>
        <span className={styles.unitName}>
          <span className={styles.unitNumber}>{number}</span> {unitName(unit)}
          {holds ? <span className="heard">, holds what is picked</span> : null}
        </span>
        <span className={styles.unitSize}>{finishedText(finishedSize(unit, grid), ruler)}</span>
      </span>
    </ToggleButton>
  );
}

function finishedText({ width, height }: TracedSize, ruler: Ruler): string {
  return same(width.value, height.value) ? `${ruler.traced(width)} square` : ruler.size(width.value, height.value);
}
