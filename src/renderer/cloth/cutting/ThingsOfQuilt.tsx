import { ToggleButton, ToggleButtonGroup } from 'react-aria-components';
import type { WorkedOut, WorkedSize } from '../../../shared/workroom/workedOut.ts';
import { useSelection } from '../../state/hooks.tsx';
import { type Selection, WHOLE_PATTERN } from '../../state/selection.ts';
import { setUnder } from '../clothStore.ts';
import styles from './cutting.module.css';
import { bindingLetters, lettersOf } from './useLit.ts';

interface Thing {
  readonly key: string;
  readonly says: string;
  readonly selection: Selection;
}

interface ThingsProps {
  readonly worked: WorkedOut;
  readonly size: WorkedSize;
}

/** The blocks, borders and binding of a size by name: a press makes all the pieces of one stand out. */
export function ThingsOfQuilt({ worked, size }: ThingsProps) {
  const [selection, select] = useSelection();
  const { pieces } = size.cloth;
  const things = thingsOf(worked, size);
  const chosen = things.filter((thing) => JSON.stringify(thing.selection) === JSON.stringify(selection));
  return (
    <ToggleButtonGroup
      className={styles.things ?? ''}
      aria-label="Show the pieces of"
      selectedKeys={chosen.map(({ key }) => key)}
      onSelectionChange={(keys) => {
        const [key] = keys;
        setUnder(null);
        select(things.find((thing) => thing.key === key)?.selection ?? WHOLE_PATTERN);
      }}
    >
      {things.map(({ key, says, selection: of }) => (
        <ToggleButton
          key={key}
          id={key}
          className={styles.thing ?? ''}
          onHoverChange={(over) => setUnder(over ? lettersOf(of, pieces) : null)}
        >
          {says}
        </ToggleButton>
      ))}
    </ToggleButtonGroup>
  );
}

function thingsOf({ pattern }: WorkedOut, { cloth, blocks, quilt }: WorkedSize): readonly Thing[] {
  const inSize = new Set(blocks.map(({ id }) => id));
  const laid = new Set([...quilt.strips, ...quilt.blocks].map(({ border }) => border));
  const [binding] = bindingLetters(cloth.pieces);
  return [
    ...pattern.blocks
      .filter(({ id }) => inSize.has(id))
      .map(({ id, name }): Thing => ({ key: `block ${id}`, says: name, selection: { kind: 'block', block: id } })),
    ...pattern.borders
      .filter(({ id }) => laid.has(id))
      .map(({ id, name }): Thing => ({ key: `border ${id}`, says: name, selection: { kind: 'border', border: id } })),
    ...(binding === undefined
      ? []
      : [{ key: 'binding', says: 'Binding', selection: { kind: 'piece', letter: binding } } satisfies Thing]),
  ];
}
