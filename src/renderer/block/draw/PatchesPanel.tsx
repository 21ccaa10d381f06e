import { patchesLike } from '../../../shared/drawing/alike.ts';
import { outlinePoints } from '../../../shared/drawing/curve.ts';
import { doubleArea } from '../../../shared/drawing/drawing.ts';
import { copyPart } from '../../../shared/drawing/part.ts';
import { UNTURNED } from '../../../shared/drawing/turn.ts';
import { addPin, mergePatches, setPatchRole } from '../../../shared/pattern/edits/index.ts';
import { PanelPart, SidePanel } from '../../app/SidePanel.tsx';
import { BackTo } from '../../parts/BackTo.tsx';
import { Button } from '../../parts/Button.tsx';
import { FabricSwatch } from '../../parts/FabricSwatch.tsx';
import { Pick } from '../../parts/Pick.tsx';
import { useAct, useSelection } from '../../state/hooks.tsx';
import { drawStore } from './drawStore.ts';
import styles from './panel.module.css';
import { boxAbout } from './picking.ts';
import { middleOf } from './towards.ts';
import type { DrawnBlock } from './useDrawn.ts';
import { useTold } from './useTold.tsx';

interface PatchesPanelProps {
  readonly drawn: DrawnBlock;
  readonly patches: readonly number[];
  readonly onBack: () => void;
}

/** Patches that are picked: their role, others like them, and what can be done with them together. */
export function PatchesPanel({ drawn, patches, onBack }: PatchesPanelProps) {
  const { drawing, recipe, block, roleName, colourOf } = drawn;
  const act = useAct();
  const [, select] = useSelection();
  const { trouble, attempt } = useTold();
  const places = patches.map((patch) => middleOf(drawing, patch));
  const roles = [...new Set(patches.map((patch) => drawing.patches[patch]?.role ?? ''))];
  const [first] = patches;
  const box = boxAbout(drawing, patches);
  const title = patches.length === 1 ? roleName(roles[0] ?? '') : `${patches.length} patches`;
  const joinAll = () => {
    if (attempt(mergePatches, { recipe: recipe.id, places })) select({ kind: 'block', block });
  };
  const pin = () => {
    const unit = [
      { x: box.x, y: box.y },
      { x: box.x + box.width, y: box.y + box.height },
    ] as const;
    attempt(addPin, { recipe: recipe.id, unit });
  };
  const takeUp = () => drawStore.setState({ copied: copyPart(drawing, box), setting: UNTURNED });
  return (
    <SidePanel title={title} kind={`Block ${block}, ${patches.length === 1 ? 'one patch' : 'picked patches'}`}>
      <BackTo onPress={onBack}>Block {block}</BackTo>
      <Pick
        label="Role"
        value={roles.length === 1 ? (roles[0] ?? '') : MIXED}
        options={[
          ...(roles.length === 1 ? [] : [{ id: MIXED, name: 'Several' }]),
          ...recipe.roles.map(({ id, name }) => ({
            id,
            name,
            says: <FabricSwatch colour={colourOf(id)} name={name} />,
          })),
        ]}
        onChange={(role) => role !== MIXED && act(setPatchRole, { recipe: recipe.id, places, role })}
      />
      <div className={styles.acts}>
        {first === undefined || patches.length > 1 ? null : (
          <Button onPress={() => select({ kind: 'patches', block, patches: patchesLike(drawing, first) })}>
            All like this
          </Button>
        )}
        {patches.length < 2 ? null : <Button onPress={joinAll}>Join into one</Button>}
        <Button onPress={takeUp}>Copy, and set in elsewhere</Button>
      </div>
      {trouble}
      {patches.length > 1 && fillsBox(drawn, patches) ? (
        <PanelPart title="Sewing">
          <p className="quiet small">Whatever else is drawn, these patches can stay one unit.</p>
          <Button className={styles.start ?? ''} onPress={pin}>
            This is one unit
          </Button>
        </PanelPart>
      ) : null}
    </SidePanel>
  );
}

const MIXED = '*';

/** Whether some patches are together a whole rectangle. */
function fillsBox({ drawing }: DrawnBlock, patches: readonly number[]): boolean {
  const { width, height } = boxAbout(drawing, patches);
  const area = patches.reduce((sum, patch) => {
    const one = drawing.patches[patch];
    return one === undefined ? sum : sum + doubleArea(outlinePoints(drawing, one)) / 2;
  }, 0);
  return Math.abs(area - width * height) < 1e-6 * width * height;
}
