import { Button } from 'react-aria-components';
import type { Fabric } from '../../shared/pattern/schema.ts';
import { FabricSwatch } from '../parts/FabricSwatch.tsx';
import { useSelection } from '../state/hooks.tsx';
import styles from './cloth.module.css';

/** A fabric's snip and name; a press selects it. */
export function FabricName({ fabric }: { readonly fabric: Fabric }) {
  const [, select] = useSelection();
  return (
    <Button className={styles.pickable ?? ''} onPress={() => select({ kind: 'fabric', fabric: fabric.id })}>
      <FabricSwatch colour={fabric.colour} name={fabric.name} photograph={fabric.photograph} />
    </Button>
  );
}
