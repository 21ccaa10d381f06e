import { startDrawing } from '../../../shared/pattern/edits/index.ts';
import { drawnBody } from '../../../shared/recipe/drawn.ts';
import type { WorkedBlock } from '../../../shared/workroom/workedOut.ts';
import { PanelPart } from '../../app/SidePanel.tsx';
import { Button } from '../../parts/Button.tsx';
import { useStudio } from '../../state/hooks.tsx';
import { refusalOf } from '../../state/host.ts';
import type { ShownBlock } from '../useShownBlock.ts';
import { freeRecipeId } from './freshDrawing.ts';
import styles from './panel.module.css';

interface DrawFreelyProps {
  readonly shown: ShownBlock;
  readonly block: WorkedBlock;
}

/** Takes a block off its grid or rounds: from then on it is drawn, and its sewing is found. */
export function DrawFreely({ shown, block }: DrawFreelyProps) {
  const studio = useStudio();
  const { choice, recipe } = shown;
  const start = async () => {
    try {
      const taken = studio.store.getState().history?.now.recipes.map(({ id }) => id) ?? [];
      const id = await freeRecipeId(studio.host, `${recipe?.id ?? 'block'} drawn`, taken);
      studio.act(startDrawing, { block: choice.id, body: drawnBody(block.piecing.drawing), id });
      studio.select({ kind: 'block', block: choice.id });
    } catch (thrown) {
      studio.say(refusalOf(thrown).words, { tone: 'stops' });
    }
  };
  return (
    <PanelPart title="Draw on it">
      <p className="quiet small">
        The block gets a recipe of its own with this drawing. “{recipe?.name}” stays in the library as it is.
      </p>
      <Button className={styles.start ?? ''} onPress={() => void start()}>
        Draw it freely
      </Button>
    </PanelPart>
  );
}
