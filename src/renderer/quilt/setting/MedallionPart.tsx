import { setMedallion } from '../../../shared/pattern/edits/index.ts';
import { readMotif } from '../../../shared/pattern/motif.ts';
import { Button } from '../../parts/Button.tsx';
import { useAct, usePattern } from '../../state/hooks.tsx';
import styles from '../quilt.module.css';

/** A medallion: one block in the middle, then rounds of borders and blocks. */
export function MedallionPart() {
  const { setting, sizes } = usePattern();
  const act = useAct();
  const [first] = readMotif(setting)[0] ?? [];
  if (first === undefined || typeof first === 'string') return null;
  if (sizes.every(({ across, down }) => across === 1 && down === 1))
    return <p className="quiet small">A medallion: its rounds are the borders, from the inside out.</p>;
  return (
    <div className={styles.acts}>
      <Button small onPress={() => act(setMedallion, { block: first.name })}>
        Begin a medallion with block {first.name}
      </Button>
      <p className="quiet small">One block in the middle of every size, then rounds of borders and blocks.</p>
    </div>
  );
}
