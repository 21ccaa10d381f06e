import { distance } from '../../../shared/drawing/near.ts';
import { placeText } from '../../../shared/drawing/spot.ts';
import { same, toRuler } from '../../../shared/measure/inches.ts';
import { addPin, removePin } from '../../../shared/pattern/edits/index.ts';
import { PanelPart, SidePanel } from '../../app/SidePanel.tsx';
import { BackTo } from '../../parts/BackTo.tsx';
import { Button } from '../../parts/Button.tsx';
import { Choice } from '../../parts/Choice.tsx';
import { useAct, usePattern, useRuler, useSelection } from '../../state/hooks.tsx';
import type { SeamPicked } from '../../state/selection.ts';
import styles from './panel.module.css';
import { isSameStretch } from './picking.ts';
import type { DrawnBlock } from './useDrawn.ts';
import { useTold } from './useTold.tsx';

interface SeamPanelProps {
  readonly drawn: DrawnBlock;
  readonly picked: SeamPicked;
  /** Finished inches of one grid unit. */
  readonly grid: number;
  readonly onBack: () => void;
}

/** A straight line of seams: where it runs, and whether it is to be sewn last. */
export function SeamPanel({ drawn, picked, grid, onBack }: SeamPanelProps) {
  const { seam, whole, near } = picked;
  const { recipe, block, body } = drawn;
  const act = useAct();
  const ruler = useRuler();
  const [, select] = useSelection();
  const { trouble, attempt } = useTold();
  const [a, b] = seam;
  const { step } = usePattern().house;
  const lengthText = (length: number) => {
    const near = toRuler(length, step, 'near');
    return same(near, length) ? ruler.length(length) : `about ${ruler.length(near)}`;
  };
  const pinned = (body.pins ?? []).findIndex(({ first }) => {
    if (first === undefined) return false;
    const [[x1, y1], [x2, y2]] = first;
    return isSameStretch(seam, [
      { x: x1, y: y1 },
      { x: x2, y: y2 },
    ]);
  });
  return (
    <SidePanel title="Seam" kind={`Block ${block}`}>
      <BackTo onPress={onBack}>Block {block}</BackTo>
      <p>
        From {placeText(a)} to {placeText(b)}: {lengthText(distance(a, b) * grid)} finished.
      </p>
      {isSameStretch(whole, near) ? null : (
        <Choice
          label="How much of it"
          value={isSameStretch(seam, whole) ? 'whole' : 'near'}
          options={[
            { id: 'whole', says: 'The whole line' },
            { id: 'near', says: 'This stretch' },
          ]}
          onChange={(much) => select({ ...picked, seam: much === 'whole' ? whole : near })}
        />
      )}
      <PanelPart title="Sewing">
        <p className="quiet small">
          {pinned < 0
            ? 'The studio chooses the order. It can be told to make both sides of this seam first, and to sew it last.'
            : 'Both sides are made first; this seam comes last of its part.'}
        </p>
        {pinned < 0 ? (
          <Button className={styles.start ?? ''} onPress={() => attempt(addPin, { recipe: recipe.id, first: seam })}>
            This seam last
          </Button>
        ) : (
          <Button className={styles.start ?? ''} onPress={() => act(removePin, { recipe: recipe.id, pin: pinned })}>
            Leave it to the studio
          </Button>
        )}
        {trouble}
      </PanelPart>
    </SidePanel>
  );
}
