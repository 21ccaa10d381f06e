import { addGridLine, removeGridLine, setGridSpan } from '../../../shared/pattern/edits/index.ts';
import { Button } from '../../parts/Button.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { useAct, useSelection } from '../../state/hooks.tsx';
import styles from './cells.module.css';
import type { PickedCells } from './pickedCells.ts';

interface LinePartProps {
  readonly picked: PickedCells;
  readonly block: string;
}

/** The column and the row a single cell stands in: how wide and high they are, one more, one less. */
export function LinePart({ picked, block }: LinePartProps) {
  const [cell] = picked.cells;
  if (cell === undefined || picked.recipe.body.kind !== 'grid') return null;
  return (
    <>
      <Line picked={picked} block={block} along="columns" at={cell.column} />
      <Line picked={picked} block={block} along="rows" at={cell.row} />
    </>
  );
}

interface LineProps extends LinePartProps {
  readonly along: 'columns' | 'rows';
  readonly at: number;
}

function Line({ picked, block, along, at }: LineProps) {
  const act = useAct();
  const [, select] = useSelection();
  const { body, id: recipe } = picked.recipe;
  if (body.kind !== 'grid') return null;
  const span = body[along][at];
  const word = along === 'columns' ? 'Column' : 'Row';
  const remove = () => {
    select({ kind: 'block', block });
    act(removeGridLine, { recipe, along, at });
  };
  return (
    <div className={styles.line}>
      {typeof span === 'number' ? (
        <NumberField
          label={`${word} ${at + 1}, grid units`}
          unit="plain"
          step={1 / 8}
          value={span}
          least={1 / 8}
          most={100}
          onChange={(units) => act(setGridSpan, { recipe, along, at, span: units })}
        />
      ) : (
        <p className="quiet small">
          {word} {at + 1} is as wide as the parameter “{span}” says.
        </p>
      )}
      <div className={styles.lineActs}>
        <Button small onPress={() => act(addGridLine, { recipe, along, at })}>
          One more {word.toLowerCase()}
        </Button>
        <Button small isDisabled={body[along].length < 2} onPress={remove}>
          Take it away
        </Button>
      </div>
    </div>
  );
}
