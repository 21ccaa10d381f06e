import { count } from '../../../shared/measure/traced.ts';
import type { SizedBlock, WorkedBlock } from '../../../shared/workroom/workedOut.ts';
import { Why } from '../../parts/Why.tsx';
import { useUnitsPicked } from '../pickedUnits.ts';
import { UnitToggle } from '../UnitToggle.tsx';
import { unitNumbers } from '../unitNumbers.ts';
import type { ShownBlock } from '../useShownBlock.ts';
import styles from './draw.module.css';

interface DrawnUnitsProps {
  readonly shown: ShownBlock;
  readonly block: WorkedBlock;
  readonly sized: SizedBlock;
}

/** The distinct units of the block, each with how many of it one block takes. */
export function DrawnUnits({ shown, block, sized }: DrawnUnitsProps) {
  const numbers = unitNumbers(block.piecing.units);
  const picked = useUnitsPicked(shown, block);
  return (
    <ol className={styles.units} aria-label={`Units of block ${block.id}`}>
      {sized.units.map((unit) => (
        <li key={unit.unit.key} className={styles.unit}>
          <UnitToggle
            number={Number(numbers[unit.unit.key])}
            made={unit}
            block={block}
            grid={sized.grid}
            holds={picked.has(unit.unit.key)}
          />
          <span className={styles.many}>
            <span className="heard">In a block: </span>
            <Why traced={count(unit.perBlock, 'in the drawing')} />
          </span>
        </li>
      ))}
    </ol>
  );
}
