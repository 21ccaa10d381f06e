import { Choice } from '../parts/Choice.tsx';
import { Why } from '../parts/Why.tsx';
import { usePattern, useRuler, useSelection } from '../state/hooks.tsx';
import styles from './block.module.css';
import { type ShownBlock, widthIn } from './useShownBlock.ts';

/** Which block is looked at, and what it measures in the current size. */
export function BlockTabs({ shown }: { readonly shown: ShownBlock }) {
  const { blocks } = usePattern();
  const ruler = useRuler();
  const [, select] = useSelection();
  const { choice, sized, size } = shown;
  return (
    <header className={styles.head}>
      {blocks.length > 1 ? (
        <Choice
          label="Block"
          bare
          value={choice.id}
          options={blocks.map(({ id, name }) => ({ id, says: `${id}  ${name}` }))}
          onChange={(block) => select({ kind: 'block', block })}
        />
      ) : (
        <h2>
          Block {choice.id}, {choice.name}
        </h2>
      )}
      {size === null ? null : sized === undefined ? (
        <p className={styles.facts}>
          {size.size.name} has no block {choice.id}
        </p>
      ) : (
        <p className={styles.facts}>
          In {size.size.name}: {ruler.length(widthIn(size, choice.id))} finished,{' '}
          <Why traced={sized.unfinished.width} /> unfinished, {sized.count} in the quilt
        </p>
      )}
    </header>
  );
}
