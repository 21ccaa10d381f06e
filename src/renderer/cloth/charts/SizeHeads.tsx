import { Button } from 'react-aria-components';
import type { WorkedOut } from '../../../shared/workroom/workedOut.ts';
import { useCurrentSize, useRuler, useStudio } from '../../state/hooks.tsx';
import styles from '../cloth.module.css';

/** The heads of the columns of sizes: name and finished measure. A press looks at that size. */
export function SizeHeads({ worked }: { readonly worked: WorkedOut }) {
  const studio = useStudio();
  const ruler = useRuler();
  const current = useCurrentSize();
  return worked.sizes.map(({ size, quilt }) => (
    <th key={size.id} scope="col" className={styles.sizeHead} data-now={size.id === current?.size.id}>
      <Button className={styles.sizeButton ?? ''} onPress={() => studio.chooseSize(size.id)}>
        <span className={styles.sizeName}>{size.name}</span>
        <span className={styles.sizeMeasure}>
          {ruler.size(quilt.finished.width.value, quilt.finished.height.value)}
        </span>
      </Button>
    </th>
  ));
}
