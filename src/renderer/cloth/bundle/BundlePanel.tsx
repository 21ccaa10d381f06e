import { oneOf } from '../../../shared/cloth/bundle/squares.ts';
import type { Ruler } from '../../../shared/measure/ruler.ts';
import { removeBundle, setBundle } from '../../../shared/pattern/edits/index.ts';
import type { Bundle, Fabric } from '../../../shared/pattern/schema.ts';
import { PanelPart, SidePanel } from '../../app/SidePanel.tsx';
import { Button } from '../../parts/Button.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { Pick } from '../../parts/Pick.tsx';
import { useAct, usePattern, useRuler } from '../../state/hooks.tsx';
import styles from './bundle.module.css';

/** What the bundle is, and which fabrics come from it. */
export function BundlePanel({ bundle }: { readonly bundle: Bundle }) {
  const { fabrics } = usePattern();
  const act = useAct();
  const { light, medium, dark } = bundle.values;
  const one = oneOf(bundle);
  const change = (part: Partial<Bundle>, mark: string) => act(setBundle, part, `bundle ${mark}`);
  return (
    <SidePanel title={`${light + medium + dark} ${one}s`} kind="The bundle">
      <div className={styles.pair}>
        <NumberField
          label={one === 'square' ? 'Squares wide' : 'Strips wide'}
          value={bundle.strip}
          least={0.5}
          most={12}
          onChange={(strip) => change({ strip }, 'strip')}
        />
        <NumberField
          label={one === 'square' ? 'Squares long' : 'Strips long'}
          value={bundle.length}
          least={1}
          most={60}
          step={0.5}
          onChange={(length) => change({ length }, 'length')}
        />
      </div>
      <div className={styles.three}>
        {(['light', 'medium', 'dark'] as const).map((value) => (
          <NumberField
            key={value}
            label={`${value.slice(0, 1).toUpperCase()}${value.slice(1)}`}
            unit="count"
            value={bundle.values[value]}
            most={400}
            onChange={(many) => change({ values: { ...bundle.values, [value]: many } }, value)}
          />
        ))}
      </div>
      <NumberField
        label="Price of a bundle"
        unit="plain"
        value={bundle.price ?? 0}
        most={100_000}
        help="0 while it is not known."
        onChange={(price) => change({ price }, 'price')}
      />
      <PanelPart title="What is cut from it">
        {fabrics.map((fabric) => (
          <FromBundle key={fabric.id} fabric={fabric} bundle={bundle} all={fabrics} />
        ))}
        <p className="quiet small">
          Pieces that match come from one {one} in each block: all the background of one star.
        </p>
      </PanelPart>
      <Button small tone="stops" onPress={() => act(removeBundle, {})}>
        Use no bundle
      </Button>
    </SidePanel>
  );
}

type WayId = 'strips' | 'match' | 'yards';

function waysOn({ clothUnit }: Ruler): readonly { readonly id: WayId; readonly name: string }[] {
  return [
    { id: 'strips', name: 'From the bundle' },
    { id: 'match', name: 'From the bundle, matching' },
    { id: 'yards', name: `By the ${clothUnit}` },
  ];
}

interface FromBundleProps {
  readonly fabric: Fabric;
  readonly bundle: Bundle;
  readonly all: readonly Fabric[];
}

/** Whether one fabric comes from the bundle, and whether it must match within a block. */
function FromBundle({ fabric: { id, name, value }, bundle, all }: FromBundleProps) {
  const act = useAct();
  const ruler = useRuler();
  const bundled = bundle.fabrics ?? all.map((fabric) => fabric.id);
  const now: WayId = !bundled.includes(id) ? 'yards' : bundle.match.includes(id) ? 'match' : 'strips';
  const choose = (way: WayId) => {
    const without = bundled.filter((one) => one !== id);
    const match = bundle.match.filter((one) => one !== id);
    const fabrics =
      way === 'yards' ? without : all.map((one) => one.id).filter((one) => one === id || bundled.includes(one));
    act(setBundle, { fabrics, match: way === 'match' ? [...match, id] : match });
  };
  return <Pick label={`${name}, ${value}`} value={now} options={waysOn(ruler)} onChange={choose} />;
}
