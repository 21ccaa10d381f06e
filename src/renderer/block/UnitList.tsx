import { useMemo } from 'react';
import { ToggleButton } from 'react-aria-components';
import { inksFor } from '../../shared/diagrams/hatches.ts';
import { unitFigure } from '../../shared/diagrams/unitFigure.ts';
import { sizeText } from '../../shared/measure/fraction.ts';
import { same } from '../../shared/measure/inches.ts';
import { count, type TracedSize, tracedText } from '../../shared/measure/traced.ts';
import { unitName } from '../../shared/piecing/unitNames.ts';
import { finishedSize } from '../../shared/workroom/finishedSize.ts';
import { unitsNeeded } from '../../shared/workroom/methodPrices.ts';
import type { SizedBlock, SizedUnit, WorkedBlock } from '../../shared/workroom/workedOut.ts';
import { Figure } from '../parts/figure/Figure.tsx';
import { Why } from '../parts/Why.tsx';
import { usePattern, useSelection } from '../state/hooks.tsx';
import { BlockFindings } from './BlockFindings.tsx';
import styles from './block.module.css';
import { CutLines } from './CutLines.tsx';
import type { ShownBlock } from './useShownBlock.ts';

interface UnitListProps {
  readonly shown: ShownBlock;
  readonly block: WorkedBlock;
  readonly sized: SizedBlock;
}

/** Every distinct unit of the block: drawn, counted, and what is cut for one batch of it. */
export function UnitList({ shown, block, sized }: UnitListProps) {
  return (
    <section className={styles.units} aria-label={`Units of block ${block.id}`}>
      <BlockFindings shown={shown} />
      <div className={styles.unitsHead} aria-hidden="true">
        <span>Unit, finished</span>
        <span>In a block</span>
        <span>In the quilt</span>
        <span>Cut for one batch</span>
      </div>
      <ol>
        {sized.units.map((unit, i) => (
          <UnitRow key={unit.unit.key} number={i + 1} unit={unit} block={block} sized={sized} />
        ))}
      </ol>
    </section>
  );
}

interface UnitRowProps {
  readonly number: number;
  readonly unit: SizedUnit;
  readonly block: WorkedBlock;
  readonly sized: SizedBlock;
}

function UnitRow({ number, unit: made, block, sized }: UnitRowProps) {
  const { unit, method, plan } = made;
  return (
    <li className={styles.unit}>
      <UnitToggle number={number} made={made} block={block} grid={sized.grid} />
      <span className={styles.number}>
        <span className="heard">In a block: </span>
        <Why traced={count(made.perBlock, 'in the drawing')} />
      </span>
      <span className={styles.number}>
        <span className="heard">In the quilt: </span>
        <Why traced={unitsNeeded(made, sized.count)} />
      </span>
      <div className={styles.cuts}>
        <CutLines cuts={plan.cuts} fabricOf={block.fabricOf} />
        {unit.kind === 'plain' || unit.kind === 'log' ? null : <p className={styles.method}>{method.name}</p>}
      </div>
    </li>
  );
}

interface UnitToggleProps {
  readonly number: number;
  readonly made: SizedUnit;
  readonly block: WorkedBlock;
  readonly grid: number;
}

function UnitToggle({ number, made, block, grid }: UnitToggleProps) {
  const { fabrics } = usePattern();
  const [selection, select] = useSelection();
  const { unit } = made;
  const figure = useMemo(() => unitFigure(unit, grid, block.fabricOf), [unit, grid, block]);
  const inks = useMemo(() => inksFor(fabrics), [fabrics]);
  const chosen = selection.kind === 'unit' && selection.block === block.id && selection.unit === unit.key;
  return (
    <ToggleButton
      className={styles.unitPick ?? ''}
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
        </span>
        <span className={styles.unitSize}>{finishedText(finishedSize(unit, grid))}</span>
      </span>
    </ToggleButton>
  );
}

function finishedText({ width, height }: TracedSize): string {
  return same(width.value, height.value) ? `${tracedText(width)} square` : sizeText(width.value, height.value);
}
