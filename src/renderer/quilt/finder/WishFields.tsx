import type { Target } from '../../../shared/quilt/find/target.ts';
import { Choice } from '../../parts/Choice.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { Pick } from '../../parts/Pick.tsx';
import { usePattern, useRuler } from '../../state/hooks.tsx';
import styles from './finder.module.css';
import { OwnMattress } from './OwnMattress.tsx';
import type { MattressChest } from './useMattresses.ts';
import type { Wish } from './wish.ts';

interface WishFieldsProps {
  readonly wish: Wish;
  readonly onChange: (wish: Wish) => void;
  readonly chest: MattressChest;
  readonly target: Target | null;
}

/** What a size is looked for: a bed with its drop and tuck, a width and height, or what one bundle is enough for. */
export function WishFields({ wish, onChange, chest, target }: WishFieldsProps) {
  const ruler = useRuler();
  const set = (fields: Partial<Wish>) => onChange({ ...wish, ...fields });
  return (
    <div className={styles.wish}>
      <Choice
        label="A size for"
        value={wish.for}
        options={[
          { id: 'bed', says: 'A bed' },
          { id: 'measure', says: 'Two measures' },
          { id: 'bundle', says: 'One bundle' },
        ]}
        onChange={(next) => set({ for: next })}
      />
      {wish.for === 'bed' ? <BedFields wish={wish} set={set} chest={chest} /> : null}
      {wish.for === 'measure' ? <MeasureFields wish={wish} set={set} /> : null}
      {wish.for === 'bundle' ? <BundleWords /> : null}
      {target === null || wish.for === 'measure' ? null : (
        <p className="small">
          Asked for: {ruler.why(target.size.width)}
          <br />
          by {ruler.why(target.size.height)}
        </p>
      )}
    </div>
  );
}

function MeasureFields({ wish, set }: Omit<BedFieldsProps, 'chest'>) {
  return (
    <div className={styles.two}>
      <NumberField
        label="Width"
        value={wish.width}
        least={6}
        most={300}
        step={1}
        onChange={(width) => set({ width })}
      />
      <NumberField
        label="Height"
        value={wish.height}
        least={6}
        most={300}
        step={1}
        onChange={(height) => set({ height })}
      />
    </div>
  );
}

/** What is known of the bundle, and where to say more of it. */
function BundleWords() {
  const { bundle } = usePattern();
  const ruler = useRuler();
  if (bundle === undefined)
    return <p className="quiet small">Say first, under Cloth, what a bundle of this pattern holds.</p>;
  const { light, medium, dark } = bundle.values;
  return (
    <p className="quiet small">
      The largest quilts that {light + medium + dark} strips of {ruler.size(bundle.strip, bundle.length)} are enough
      for, in the blocks the pattern has.
    </p>
  );
}

interface BedFieldsProps {
  readonly wish: Wish;
  readonly set: (fields: Partial<Wish>) => void;
  readonly chest: MattressChest;
}

function BedFields({ wish, set, chest }: BedFieldsProps) {
  const ruler = useRuler();
  const bed = chest.all.find(({ id }) => id === wish.bed) ?? chest.all[0];
  if (bed === undefined) return null;
  const own = chest.own.some(({ id }) => id === bed.id);
  const source = chest.tables.find(({ mattresses }) => mattresses.some(({ id }) => id === bed.id));
  return (
    <>
      <Pick
        label="Mattress"
        value={bed.id}
        options={chest.all.map(({ id, name, width, length }) => ({
          id,
          name: `${name}, ${ruler.size(width, length)}`,
        }))}
        onChange={(id) => set({ bed: id })}
      />
      {own || source === undefined ? null : (
        <p className="quiet tiny">
          {source.name}: {source.source}
        </p>
      )}
      <div className={styles.two}>
        <NumberField label="Drop" value={wish.drop} least={0} most={60} step={1} onChange={(drop) => set({ drop })} />
        <NumberField
          label="Pillow tuck"
          value={wish.tuck}
          least={0}
          most={60}
          step={1}
          onChange={(tuck) => set({ tuck })}
        />
      </div>
      <OwnMattress chest={chest} chosen={own ? bed : null} onChoose={(id) => set({ bed: id })} />
    </>
  );
}
