import { returnToMotif } from '../../../shared/pattern/edits/index.ts';
import { PanelPart } from '../../app/SidePanel.tsx';
import { Button } from '../../parts/Button.tsx';
import { useAct, usePattern } from '../../state/hooks.tsx';
import styles from '../quilt.module.css';

/** How many single blocks differ from the motif, and the way back for all of them. */
export function SinglesPart() {
  const { setting, sizes } = usePattern();
  const act = useAct();
  const { single } = setting;
  if (single.length === 0) return null;
  const every = single.filter(({ size }) => size === undefined).length;
  const own = sizes.flatMap(({ id, name }) => {
    const count = single.filter(({ size }) => size === id).length;
    return count === 0 ? [] : [`${count} in ${name} only`];
  });
  const words = [...(every === 0 ? [] : [`${every} in every size`]), ...own].join(', ');
  return (
    <PanelPart title="Single blocks">
      <p className="small">Differ from the motif: {words}.</p>
      <Button small className={styles.start ?? ''} onPress={() => act(returnToMotif, { cells: single, size: null })}>
        Return them all to the motif
      </Button>
    </PanelPart>
  );
}
