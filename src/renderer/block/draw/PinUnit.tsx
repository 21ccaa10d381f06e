import type { Box } from '../../../shared/drawing/turn.ts';
import { addPin } from '../../../shared/pattern/edits/index.ts';
import { leavesOf } from '../../../shared/piecing/tree.ts';
import type { SizedUnit, WorkedBlock } from '../../../shared/workroom/workedOut.ts';
import { PanelPart } from '../../app/SidePanel.tsx';
import { Button } from '../../parts/Button.tsx';
import styles from './panel.module.css';
import type { DrawnBlock } from './useDrawn.ts';
import { useTold } from './useTold.tsx';

interface PinUnitProps {
  readonly drawn: DrawnBlock;
  readonly block: WorkedBlock;
  readonly made: SizedUnit;
}

/** Fixes a unit where it stands in the drawing: whatever else is drawn, it stays one unit and is made as it is made now. */
export function PinUnit({ drawn, block, made }: PinUnitProps) {
  const { trouble, attempt } = useTold();
  const { drawing, recipe, body } = drawn;
  const scale = drawing.width / block.piecing.drawing.width;
  const here = leavesOf(block.piecing.root).filter(({ unit }) => unit === made.unit.key);
  const many = here.reduce((sum, { patches }) => sum + patches.length, 0) > here.length;
  if (!many) return null;
  const ends = ({ x, y, width, height }: Box) =>
    [
      { x: x * scale, y: y * scale },
      { x: (x + width) * scale, y: (y + height) * scale },
    ] as const;
  const isPinned = (box: Box) => {
    const [a, b] = ends(box);
    return (body.pins ?? []).some(
      ({ unit, method }) =>
        unit !== undefined &&
        method === made.method.id &&
        Math.hypot(unit[0][0] - a.x, unit[0][1] - a.y) + Math.hypot(unit[1][0] - b.x, unit[1][1] - b.y) < 1e-6,
    );
  };
  const open = here.filter(({ box }) => !isPinned(box));
  const pin = () => {
    const mark = `pin ${made.unit.key} ${made.method.id}`;
    for (const { box } of open) {
      if (!attempt(addPin, { recipe: recipe.id, unit: ends(box), method: made.method.id }, mark)) return;
    }
  };
  return (
    <PanelPart title="In this drawing">
      <p className="quiet small">
        {open.length === 0
          ? 'It is fixed by you: one unit, made this way. The block lists what you have fixed.'
          : 'Fix it, and it stays one unit made this way, whatever else is drawn.'}
      </p>
      {open.length === 0 ? null : (
        <Button className={styles.start ?? ''} onPress={pin}>
          {open.length === 1 ? 'Make it this way here' : `Make all ${open.length} this way`}
        </Button>
      )}
      {trouble}
    </PanelPart>
  );
}
