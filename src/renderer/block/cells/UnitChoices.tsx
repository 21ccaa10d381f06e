import { useMemo } from 'react';
import { ToggleButton } from 'react-aria-components';
import { inksFor } from '../../../shared/diagrams/hatches.ts';
import { unitFigure } from '../../../shared/diagrams/unitFigure.ts';
import { putCells } from '../../../shared/pattern/edits/index.ts';
import { unitFor } from '../../../shared/piecing/lowerUnit.ts';
import { unitKindName } from '../../../shared/piecing/unitNames.ts';
import type { WorkedBlock } from '../../../shared/workroom/workedOut.ts';
import { Figure } from '../../parts/figure/Figure.tsx';
import { useAct, usePattern } from '../../state/hooks.tsx';
import styles from './cells.module.css';
import type { PickedCells } from './pickedCells.ts';
import { unitChoices } from './unitChoices.ts';

interface UnitChoicesProps {
  readonly picked: PickedCells;
  readonly fabricOf: WorkedBlock['fabricOf'];
}

/** Every unit that suits the cells, drawn small: pressed, it stands in all of them. */
export function UnitChoices({ picked, fabricOf }: UnitChoicesProps) {
  const act = useAct();
  const { fabrics } = usePattern();
  const inks = useMemo(() => inksFor(fabrics), [fabrics]);
  const { recipe, cells, holds, token, width, height } = picked;
  const now = holds !== null && 'unit' in holds ? holds.unit : null;
  const choices = useMemo(() => {
    return unitChoices(recipe, holds, width, height).flatMap((choice) => {
      const cell = holds !== null && 'unit' in holds && holds.unit === choice.cell.unit ? holds : choice.cell;
      const unit = unitFor(recipe, cell, choice.width, choice.height);
      const grid = 1 / Math.max(choice.width, choice.height);
      const turn = token === null ? {} : { turn: token.turn };
      return unit === null ? [] : [{ cell, figure: unitFigure(unit, grid, fabricOf, turn) }];
    });
  }, [recipe, holds, token, width, height, fabricOf]);
  return (
    <div className={styles.choices}>
      {choices.map(({ cell, figure }) => (
        <ToggleButton
          key={cell.unit}
          className={styles.choice ?? ''}
          isSelected={now === cell.unit}
          onChange={() => {
            if (now !== cell.unit)
              act(putCells, { recipe: recipe.id, cells, holds: cell, ...(token === null ? {} : { turn: token.turn }) });
          }}
        >
          <span className={styles.picture} aria-hidden="true">
            <Figure figure={figure} inks={inks} />
          </span>
          <span className={styles.kind}>{SHORT[cell.unit] ?? unitKindName(cell.unit)}</span>
        </ToggleButton>
      ))}
    </div>
  );
}

/** Where the trade has a shorter word, so that the names stand in a narrow place. */
const SHORT: Readonly<Record<string, string>> = {
  hst: 'Half-square',
  qst: 'Quarter-square',
  'three-patch': 'Three-patch',
  corners: 'Flipped corners',
  checkerboard: 'Checker\u00adboard',
  'half-rectangle': 'Half rectangle',
};
