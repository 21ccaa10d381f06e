import { Button } from 'react-aria-components';
import { useCurrentSize, useRuler, useStudio, useWorked } from '../state/hooks.tsx';
import styles from './QuiltInSight.module.css';
import { SmallQuilt } from './SmallQuilt.tsx';

/** The quilt in the size looked at, kept in sight while another view is in hand. A press goes to it. */
export function QuiltInSight() {
  const studio = useStudio();
  const ruler = useRuler();
  const worked = useWorked();
  const sized = useCurrentSize();
  if (worked === null || sized === null) return null;
  const { width, height } = sized.quilt.finished;
  const words = `${sized.size.name}, ${ruler.size(width.value, height.value)}`;
  return (
    <Button
      className={styles.sight ?? ''}
      aria-label={`To the whole quilt: ${words}`}
      onPress={() => studio.show('quilt')}
    >
      <SmallQuilt worked={worked} sized={sized} fit="box" />
      <span className={styles.words}>{words.replaceAll(' × ', '\u00a0×\u00a0').replaceAll(' cm', '\u00a0cm')}</span>
    </Button>
  );
}
