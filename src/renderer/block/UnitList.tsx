import { count } from '../../shared/measure/traced.ts';
import { unitCalled } from '../../shared/piecing/unitNames.ts';
import type { UnitInside } from '../../shared/piecing/unitsInside.ts';
import { unitsNeeded } from '../../shared/workroom/methodPrices.ts';
import type { SizedBlock, SizedUnit, WorkedBlock } from '../../shared/workroom/workedOut.ts';
import { Why } from '../parts/Why.tsx';
import { BlockFindings } from './BlockFindings.tsx';
import styles from './block.module.css';
import { CutLines } from './CutLines.tsx';
import { CutForOne } from './draw/CutForOne.tsx';
import { FoundHead } from './draw/FoundHead.tsx';
import { useColourOf } from './draw/useDrawn.ts';
import { useUnitsPicked } from './pickedUnits.ts';
import { UnitToggle } from './UnitToggle.tsx';
import { unitNumbers } from './unitNumbers.ts';
import type { ShownBlock } from './useShownBlock.ts';

interface UnitListProps {
  readonly shown: ShownBlock;
  readonly block: WorkedBlock;
  /** In the size looked at; as one block alone where that has none. */
  readonly sized: SizedBlock;
  /** One block alone. */
  readonly one: SizedBlock;
}

/** Every distinct unit of the block: drawn, counted, and what is cut for one batch of it. */
export function UnitList({ shown, block, sized, one }: UnitListProps) {
  const colourOf = useColourOf(shown.choice);
  const numbers = unitNumbers(block.piecing.units);
  const many = shown.sized?.count ?? 0;
  const picked = useUnitsPicked(shown, block);
  return (
    <section className={styles.units} aria-label={`Units of block ${block.id}`}>
      <FoundHead block={block.id} piecing={block.piecing} colourOf={colourOf} />
      <BlockFindings shown={shown} />
      <div>
        <div className={styles.unitsHead} aria-hidden="true">
          <span>Unit, finished</span>
          <span>In a block</span>
          <span>In the quilt</span>
          <span>Cut for one batch</span>
        </div>
        <ol>
          {sized.units.map((unit) => (
            <UnitRow
              key={unit.unit.key}
              number={Number(numbers[unit.unit.key])}
              unit={unit}
              block={block}
              grid={sized.grid}
              many={many}
              holds={picked.has(unit.unit.key)}
            />
          ))}
        </ol>
      </div>
      <CutForOne block={block} one={one} />
    </section>
  );
}

interface UnitRowProps {
  readonly number: number;
  readonly unit: SizedUnit;
  readonly block: WorkedBlock;
  readonly grid: number;
  /** Blocks in the quilt. */
  readonly many: number;
  readonly holds: boolean;
}

function UnitRow({ number, unit: made, block, grid, many, holds }: UnitRowProps) {
  const { unit, method, plan } = made;
  return (
    <li className={styles.unit}>
      <UnitToggle number={number} made={made} block={block} grid={grid} holds={holds} />
      <span className={styles.number}>
        <span className="heard">In a block: </span>
        <Why traced={count(made.perBlock, 'in the drawing')} />
      </span>
      <span className={styles.number}>
        <span className="heard">In the quilt: </span>
        <Why traced={unitsNeeded(made, many)} />
      </span>
      <div className={styles.cuts}>
        <CutLines cuts={plan.cuts} fabricOf={block.fabricOf} />
        {unit.kind === 'plain' || unit.kind === 'log' ? null : <p className={styles.method}>{method.name}</p>}
        {plan.takes === undefined ? null : <p className={styles.method}>{takenWords(plan.takes)}</p>}
      </div>
    </li>
  );
}

/** What is made before a pieced unit: "Takes 6 half-square triangles and 1 square in a square". */
function takenWords(takes: readonly UnitInside[]): string {
  const each = takes.map(({ unit, count: many }) => `${many} ${unitCalled(unit.kind, many)}`);
  return `Takes ${each.length === 1 ? each[0] : `${each.slice(0, -1).join(', ')} and ${each.at(-1)}`}`;
}
