import { ToggleButton, ToggleButtonGroup } from 'react-aria-components';
import { Button } from '../../parts/Button.tsx';
import { Choice } from '../../parts/Choice.tsx';
import { FabricSwatch } from '../../parts/FabricSwatch.tsx';
import { usePattern } from '../../state/hooks.tsx';
import styles from '../quilt.module.css';
import { type Brush, quiltStore, useQuiltState } from '../quiltStore.ts';

const keyOf = (brush: Brush | null) =>
  brush === null ? '' : brush.kind === 'block' ? `block ${brush.block}` : `fabric ${brush.fabric}`;

/** What is painted with: a block, or a fabric. Shown while a brush is in hand. */
export function BrushStrip() {
  const { blocks, fabrics } = usePattern();
  const brush = useQuiltState((state) => state.brush);
  if (brush === null) return null;
  const brushes: readonly Brush[] = [
    ...blocks.map(({ id }) => ({ kind: 'block' as const, block: id })),
    ...fabrics.map(({ id }) => ({ kind: 'fabric' as const, fabric: id })),
  ];
  const choose = (key: unknown) => {
    const next = brushes.find((one) => keyOf(one) === key);
    if (next !== undefined) quiltStore.setState({ brush: next });
  };
  return (
    <section className={styles.brushStrip} aria-label="Paint">
      <ToggleButtonGroup
        className={styles.brushes ?? ''}
        aria-label="Paint with"
        disallowEmptySelection
        selectedKeys={[keyOf(brush)]}
        onSelectionChange={(keys) => choose([...keys][0])}
      >
        {blocks.map(({ id, name }) => (
          <ToggleButton key={id} id={`block ${id}`} className={styles.brush ?? ''} aria-label={`Block ${id}, ${name}`}>
            Block {id}
          </ToggleButton>
        ))}
        {fabrics.map(({ id, name, colour }) => (
          <ToggleButton key={id} id={`fabric ${id}`} className={styles.brush ?? ''}>
            <FabricSwatch colour={colour} name={name} />
          </ToggleButton>
        ))}
      </ToggleButtonGroup>
      {brush.kind === 'fabric' ? <AloneChoice /> : null}
      <Button small onPress={() => quiltStore.setState({ brush: null })}>
        Done
      </Button>
    </section>
  );
}

function AloneChoice() {
  const alone = useQuiltState((state) => state.alone);
  return (
    <Choice
      label="Where the fabric goes"
      bare
      value={alone ? 'here' : 'every'}
      options={[
        { id: 'every', says: 'Every such block' },
        { id: 'here', says: 'Only here' },
      ]}
      onChange={(id) => quiltStore.setState({ alone: id === 'here' })}
    />
  );
}
