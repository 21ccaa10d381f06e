import { Label, Radio, RadioGroup } from 'react-aria-components';
import { setPatchRole } from '../../../shared/pattern/edits/index.ts';
import { FabricSwatch } from '../../parts/FabricSwatch.tsx';
import { useAct, useSelection } from '../../state/hooks.tsx';
import styles from './draw.module.css';
import { drawStore, useDrawState } from './drawStore.ts';
import { middleOf } from './towards.ts';
import type { DrawnBlock } from './useDrawn.ts';
import { brushOf } from './useHand.ts';

/** The fabric roles as brushes. While patches are picked, choosing one gives them that role. */
export function Brushes({ drawn }: { readonly drawn: DrawnBlock }) {
  const { recipe, drawing, block, colourOf } = drawn;
  const brush = useDrawState((state) => state.brush);
  const act = useAct();
  const [selection] = useSelection();
  const choose = (role: string) => {
    drawStore.setState({ brush: role });
    if (selection.kind !== 'patches' || selection.block !== block) return;
    const places = selection.patches.flatMap((patch) =>
      patch < drawing.patches.length ? [middleOf(drawing, patch)] : [],
    );
    act(setPatchRole, { recipe: recipe.id, places, role });
  };
  return (
    <RadioGroup className={styles.brushes ?? ''} value={brushOf(drawn, brush)} onChange={choose}>
      <Label>Fill with</Label>
      {recipe.roles.map(({ id, name }) => (
        <Radio key={id} value={id} className={styles.brush ?? ''}>
          <FabricSwatch colour={colourOf(id)} name={name} />
        </Radio>
      ))}
    </RadioGroup>
  );
}
