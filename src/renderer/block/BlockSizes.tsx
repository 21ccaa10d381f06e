import type { BlockChoice } from '../../shared/pattern/schema.ts';
import { Why } from '../parts/Why.tsx';
import { useRuler, useWorked } from '../state/hooks.tsx';
import styles from './block.module.css';
import { widthIn } from './useShownBlock.ts';

/** What the block measures, and how many there are, in every size. */
export function BlockSizes({ choice }: { readonly choice: BlockChoice }) {
  const sizes = useWorked()?.sizes ?? [];
  const ruler = useRuler();
  return (
    <table className={styles.table}>
      <thead>
        <tr>
          <th scope="col">Size</th>
          <th scope="col">Finished</th>
          <th scope="col">Unfinished</th>
          <th scope="col">Blocks</th>
        </tr>
      </thead>
      <tbody>
        {sizes.map((one) => {
          const { size, blocks } = one;
          const sized = blocks.find(({ id }) => id === choice.id);
          return (
            <tr key={size.id}>
              <th scope="row">{size.name}</th>
              <td>{ruler.length(widthIn(one, choice.id))}</td>
              <td>{sized === undefined ? '' : <Why traced={sized.unfinished.width} />}</td>
              <td>{sized?.count ?? 'none'}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
