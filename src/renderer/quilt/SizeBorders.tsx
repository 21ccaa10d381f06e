import { setBorderWidthIn } from '../../shared/pattern/edits/index.ts';
import type { Size } from '../../shared/pattern/schema.ts';
import { PanelPart } from '../app/SidePanel.tsx';
import { Button } from '../parts/Button.tsx';
import { NumberField } from '../parts/NumberField.tsx';
import { useAct, usePattern } from '../state/hooks.tsx';
import styles from './quilt.module.css';

/** The borders as this size has them. */
export function SizeBorders({ size }: { readonly size: Size }) {
  const { borders } = usePattern();
  const act = useAct();
  if (borders.length === 0) return null;
  const set = (border: string, width: number | null) =>
    act(setBorderWidthIn, { border, size: size.id, width }, `border ${border} ${size.id}`);
  return (
    <PanelPart title="Borders in this size">
      <ul className={styles.bySize}>
        {borders.map(({ id, name, width }) => {
          const own = size.borders[id];
          return (
            <li key={id} className={styles.bySizeRow}>
              <span>{name}</span>
              <NumberField
                label={`${name} in ${size.name}`}
                bare
                least={0}
                most={60}
                value={own ?? width}
                onChange={(next) => set(id, next)}
              />
              {own === undefined ? (
                <span className={styles.same}>as others</span>
              ) : (
                <Button tone="bare" small aria-label={`As others again: ${name}`} onPress={() => set(id, null)}>
                  As others again
                </Button>
              )}
            </li>
          );
        })}
      </ul>
    </PanelPart>
  );
}
