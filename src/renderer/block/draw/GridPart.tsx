import { Checkbox } from 'react-aria-components';
import type { Turn } from '../../../shared/drawing/turn.ts';
import { refineDrawing, regridDrawing, startDrawing, turnDrawing } from '../../../shared/pattern/edits/index.ts';
import { PanelPart } from '../../app/SidePanel.tsx';
import { Button } from '../../parts/Button.tsx';
import { Stepper } from '../../parts/Stepper.tsx';
import { useAct } from '../../state/hooks.tsx';
import { drawStore, useDrawState } from './drawStore.ts';
import styles from './panel.module.css';
import type { DrawnBlock } from './useDrawn.ts';
import { useTold } from './useTold.tsx';

/** The grid the block is drawn on, and what can be done with the drawing as a whole. */
export function GridPart({ drawn }: { readonly drawn: DrawnBlock }) {
  const { drawing, recipe, block } = drawn;
  const { trouble, attempt } = useTold();
  const act = useAct();
  const stars = useDrawState((state) => state.stars);
  const { width, height } = drawing;
  const regrid = (across: number, down: number) => attempt(regridDrawing, { recipe: recipe.id, across, down });
  const blank = drawing.patches.length === 1;
  return (
    <PanelPart title="Grid">
      <Stepper
        label="Across"
        value={width}
        least={1}
        most={64}
        onChange={(across) => regrid(across, blank || width !== height ? height : across)}
      />
      <Stepper
        label="Down"
        value={height}
        least={1}
        most={64}
        onChange={(down) => regrid(blank || width !== height ? width : down, down)}
      />
      {trouble}
      {blank ? null : <p className="quiet small">The drawing keeps its shape; the lines under it change.</p>}
      <div className={styles.acts}>
        <Button small onPress={() => attempt(refineDrawing, { recipe: recipe.id, times: 2 })}>
          Twice as fine
        </Button>
        <Button
          small
          isDisabled={blank}
          onPress={() =>
            act(startDrawing, { block, body: { kind: 'drawing', width, height, role: recipe.roles[0]?.id ?? '' } })
          }
        >
          Draw afresh
        </Button>
      </div>
      <Checkbox className={styles.check ?? ''} isSelected={stars} onChange={(on) => drawStore.setState({ stars: on })}>
        <span className={styles.checkBox} aria-hidden="true" />
        Marks for an eight-point star
      </Checkbox>
      <div className={styles.acts}>
        <WholeTurns onTurn={(by) => attempt(turnDrawing, { recipe: recipe.id, by })} />
      </div>
    </PanelPart>
  );
}

function WholeTurns({ onTurn }: { readonly onTurn: (by: Turn) => void }) {
  return (
    <>
      <Button small onPress={() => onTurn({ quarters: 1, mirrored: false })}>
        Turn it
      </Button>
      <Button small onPress={() => onTurn({ quarters: 0, mirrored: true })}>
        Mirror it
      </Button>
    </>
  );
}
