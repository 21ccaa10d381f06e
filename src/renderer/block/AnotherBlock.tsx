import { PanelPart } from '../app/SidePanel.tsx';
import { Button } from '../parts/Button.tsx';
import { useStudio } from '../state/hooks.tsx';
import styles from './block.module.css';
import { DrawNewBlock } from './draw/DrawNewBlock.tsx';

/** How one more block comes into the pattern: drawn here, or from a recipe of the library. */
export function AnotherBlock() {
  const studio = useStudio();
  return (
    <PanelPart title="Another block">
      <div className={styles.acts}>
        <DrawNewBlock small />
        <Button small onPress={() => studio.show('library')}>
          Choose one in the Library
        </Button>
      </div>
    </PanelPart>
  );
}
