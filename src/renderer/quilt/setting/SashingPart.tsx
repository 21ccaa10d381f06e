import { toRuler } from '../../../shared/measure/inches.ts';
import {
  addSashing,
  addSashStrip,
  removeSashing,
  removeSashStrip,
  setCornerstones,
  setSashingOutside,
  setSashStrip,
} from '../../../shared/pattern/edits/index.ts';
import type { Sashing, Setting } from '../../../shared/pattern/schema.ts';
import { PanelPart } from '../../app/SidePanel.tsx';
import { Choice } from '../../parts/Choice.tsx';
import { FabricPick } from '../../parts/FabricPick.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { usePattern, useRuler, useStudio } from '../../state/hooks.tsx';
import styles from '../quilt.module.css';
import { FabricOr } from './FabricOr.tsx';
import { SashingBySize } from './SashingBySize.tsx';

const COUNTS = [
  { id: '0', says: 'None' },
  { id: '1', says: '1 strip' },
  { id: '2', says: '2' },
  { id: '3', says: '3' },
] as const;

/** Sashing on and off, of one to three strips side by side. */
export function SashingPart({ setting }: { readonly setting: Setting }) {
  const { sashing } = setting;
  const setCount = useStripCount(sashing?.strips.length ?? 0);
  return (
    <PanelPart title="Sashing">
      <Choice
        label={setting.kind === 'strips' ? 'Between the strips' : 'Between the blocks'}
        value={String(sashing?.strips.length ?? 0)}
        options={COUNTS}
        onChange={(id) => setCount(Number(id))}
      />
      {sashing === undefined ? null : <SashFields sashing={sashing} kind={setting.kind} />}
    </PanelPart>
  );
}

function SashFields({ sashing, kind }: { readonly sashing: Sashing; readonly kind: Setting['kind'] }) {
  const { act } = useStudio();
  const { strips, cornerstones, outside = false } = sashing;
  return (
    <>
      {strips.map((strip, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a strip is its place
        <Strip key={i} strip={strip} at={i} only={strips.length === 1} />
      ))}
      {kind === 'strips' ? null : (
        <FabricOr
          label="Cornerstones"
          value={cornerstones ?? null}
          or="None: the sashing runs through"
          onChange={(fabric) => act(setCornerstones, { fabric })}
        />
      )}
      <Choice
        label="It lies"
        value={outside ? 'outside' : 'inside'}
        options={[
          { id: 'inside', says: 'Inside only' },
          { id: 'outside', says: 'Also outside' },
        ]}
        onChange={(id) => act(setSashingOutside, { outside: id === 'outside' })}
      />
      <SashingBySize sashing={sashing} />
    </>
  );
}

interface StripProps {
  readonly strip: Sashing['strips'][number];
  readonly at: number;
  readonly only: boolean;
}

function Strip({ strip: { fabric, width }, at, only }: StripProps) {
  const { act } = useStudio();
  const which = only ? 'Sashing' : `Strip ${at + 1}`;
  return (
    <div className={styles.pair}>
      <FabricPick
        label={`${which}: fabric`}
        value={fabric}
        onChange={(next) => act(setSashStrip, { strip: at, fabric: next })}
      />
      <NumberField
        label="Finished width"
        value={width}
        least={0.0625}
        most={60}
        onChange={(next) => act(setSashStrip, { strip: at, width: next }, `sash ${at}`)}
      />
    </div>
  );
}

let turns = 0;

/** Sets how many strips there are; one act however many are added or taken away. */
function useStripCount(now: number): (count: number) => void {
  const { fabrics, sizes } = usePattern();
  const { act } = useStudio();
  const half = useRuler().stepOf(1 / 2);
  const fabric = (fabrics.find(({ value }) => value === 'light') ?? fabrics[0])?.id ?? '';
  // A sixth of the block, on half inches or whole centimetres: common practice, from memory.
  const usual = Math.max(half, toRuler((sizes[0]?.block ?? 9) / 6, half, 'near'));
  return (count) => {
    turns += 1;
    const mark = `strips of sashing ${turns}`;
    if (count === 0) return act(removeSashing, {});
    if (now === 0) act(addSashing, { fabric, width: usual }, mark);
    for (let i = Math.max(1, now); i < count; i += 1) act(addSashStrip, { fabric, width: usual }, mark);
    for (let i = now; i > count; i -= 1) act(removeSashStrip, { strip: i - 1 }, mark);
  };
}
