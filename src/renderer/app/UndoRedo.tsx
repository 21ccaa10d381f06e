import { redo } from '../commands/redo.ts';
import { undo } from '../commands/undo.ts';
import { Button } from '../parts/Button.tsx';
import { useStudio, useStudioState } from '../state/hooks.tsx';
import styles from './UndoRedo.module.css';

/** The last act and the way back, by name. */
export function UndoRedo() {
  const studio = useStudio();
  const undoLabel = useStudioState(undo.label);
  const redoLabel = useStudioState(redo.label);
  const canUndo = useStudioState(undo.enabled);
  const canRedo = useStudioState(redo.enabled);
  return (
    <div className={styles.both}>
      <Button tone="bare" small isDisabled={!canUndo} onPress={() => studio.undo()} aria-label={undoLabel}>
        <span className={styles.label}>{undoLabel}</span>
      </Button>
      {canRedo ? (
        <Button tone="bare" small onPress={() => studio.redo()} aria-label={redoLabel}>
          <span className={styles.label}>{redoLabel}</span>
        </Button>
      ) : null}
    </div>
  );
}
