import { putCells } from '../../../shared/pattern/edits/index.ts';
import { Pick } from '../../parts/Pick.tsx';
import { useAct, usePattern } from '../../state/hooks.tsx';
import { cellParts } from './cellParts.ts';
import styles from './cells.module.css';
import type { PickedCells } from './pickedCells.ts';

interface CellPartsProps {
  readonly picked: PickedCells;
  readonly colourOf: (role: string) => string;
}

/** The fabric role of each part of what the cells hold. */
export function CellParts({ picked, colourOf }: CellPartsProps) {
  const act = useAct();
  const { recipes } = usePattern();
  const { recipe, cells, holds, token } = picked;
  if (holds === null || token === null) return null;
  const options = recipe.roles.map(({ id, name }) => ({
    id,
    name,
    says: (
      <span className={styles.role}>
        <span className={styles.swatch} style={{ background: colourOf(id) }} />
        {name}
      </span>
    ),
  }));
  return (
    <div className={styles.parts}>
      {cellParts(holds, recipes).map(({ words, role, as }) => (
        <Pick
          key={words}
          label={words}
          value={role}
          options={options}
          onChange={(next) => act(putCells, { recipe: recipe.id, cells, holds: as(next), turn: token.turn })}
        />
      ))}
    </div>
  );
}
