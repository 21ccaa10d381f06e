import { setBorderWidthIn } from '../../shared/pattern/edits/index.ts';
import type { Border } from '../../shared/pattern/schema.ts';
import { Button } from '../parts/Button.tsx';
import { NumberField } from '../parts/NumberField.tsx';
import { useAct, usePattern } from '../state/hooks.tsx';
import styles from './quilt.module.css';

/** The border's width in every size. A size may differ on purpose; 0 leaves the border out there. */
export function BorderBySize({ border }: { readonly border: Border }) {
  const { sizes } = usePattern();
  const act = useAct();
  const set = (size: string, width: number | null) =>
    act(setBorderWidthIn, { border: border.id, size, width }, `border ${border.id} ${size}`);
  return (
    <ul className={styles.bySize}>
      {sizes.map(({ id, name, borders }) => {
        const own = borders[border.id];
        return (
          <li key={id} className={styles.bySizeRow}>
            <span>{name}</span>
            <NumberField
              label={`Width in ${name}`}
              bare
              least={0}
              most={60}
              value={own ?? border.width}
              onChange={(width) => set(id, width)}
            />
            {own === undefined ? (
              <span className={styles.same}>as above</span>
            ) : (
              <Button tone="bare" small aria-label={`As above again in ${name}`} onPress={() => set(id, null)}>
                As above again
              </Button>
            )}
          </li>
        );
      })}
    </ul>
  );
}
