import { useState } from 'react';
import { PanelPart } from '../app/SidePanel.tsx';
import { Button } from '../parts/Button.tsx';
import { useStudio } from '../state/hooks.tsx';
import styles from './block.module.css';
import { DrawNew } from './draw/DrawNew.tsx';

/** How one more block comes into the pattern: drawn here, or from a recipe of the library. */
export function AnotherBlock() {
  const studio = useStudio();
  const [drawing, setDrawing] = useState(false);
  return (
    <PanelPart title="Another block">
      <div className={styles.acts}>
        <Button small onPress={() => setDrawing(true)}>
          Draw a new block
        </Button>
        <Button small onPress={() => studio.show('library')}>
          Choose one in the Library
        </Button>
      </div>
      <DrawNew isOpen={drawing} onClose={() => setDrawing(false)} />
    </PanelPart>
  );
}
