import { useMemo, useState } from 'react';
import { Label, Radio, RadioGroup } from 'react-aria-components';
import { type Inches, onRuler, same } from '../../../shared/measure/inches.ts';
import { CENTIMETRE, type Units } from '../../../shared/measure/metric.ts';
import { setSizeBlock, setUsualSize } from '../../../shared/pattern/edits/index.ts';
import type { Piecing } from '../../../shared/piecing/piecing.ts';
import { ASKED_SIZES, type RulerSize, rulerFriendlySizes } from '../../../shared/piecing/rulerSizes.ts';
import { PanelPart } from '../../app/SidePanel.tsx';
import { Mark } from '../../parts/Mark.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { useAct, usePattern, useRuler } from '../../state/hooks.tsx';
import type { ShownBlock } from '../useShownBlock.ts';
import styles from './panel.module.css';

const CM = CENTIMETRE;

/** Sizes that are offered on each ruler; any other may be typed. */
const OFFERED: Readonly<Record<Units, readonly Inches[]>> = {
  inches: ASKED_SIZES.filter((size) => size >= 3 && size <= 18),
  centimetres: Array.from({ length: 38 }, (_, i) => (8 + i) * CM),
};

/** Sizes that are shown even where they fall between the marks: whole inches, or every fifth centimetre. */
const SHOWN: Readonly<Record<Units, Inches>> = { inches: 1, centimetres: 5 * CM };

interface SizePartProps {
  readonly shown: ShownBlock;
  readonly piecing: Piecing;
}

/** How large the block is made: sizes at which everything in it falls on the ruler's marks stand out. */
export function SizePart({ shown, piecing }: SizePartProps) {
  const { house } = usePattern();
  const act = useAct();
  const ruler = useRuler();
  const { size, recipe, choice } = shown;
  const finished = (shown.sized === undefined ? recipe?.finished : size?.quilt.block.width) ?? 0;
  const sizes = useMemo(
    () => rulerFriendlySizes(piecing, house.step, withOne(OFFERED[ruler.units], finished)),
    [piecing, house.step, finished, ruler],
  );
  const change = (block: number) => {
    if (size !== null && shown.sized !== undefined) act(setSizeBlock, { size: size.size.id, block });
    else if (recipe !== undefined) act(setUsualSize, { recipe: recipe.id, finished: block });
  };
  const title =
    size !== null && shown.sized !== undefined ? `Finished block in ${size.size.name}` : 'Usual finished size';
  const always = SHOWN[ruler.units];
  const shownSizes = sizes.filter((one) => one.friendly || onRuler(one.size, always) || same(one.size, finished));
  return (
    <PanelPart title={title}>
      <RulerSizes key={choice.id} sizes={shownSizes} finished={finished} onChange={change} />
      <NumberField label="Another size" value={finished} least={0.5} most={120} onChange={change} />
    </PanelPart>
  );
}

function withOne(sizes: readonly number[], one: number): readonly number[] {
  if (one <= 0) return sizes;
  return [...sizes.filter((size) => !same(size, one)), one].sort((a, b) => a - b);
}

interface RulerSizesProps {
  readonly sizes: readonly RulerSize[];
  readonly finished: number;
  readonly onChange: (size: number) => void;
}

/** Sizes side by side as on a ruler, those that are friendly with a mark of their own; below, why one is or is not. */
function RulerSizes({ sizes, finished, onChange }: RulerSizesProps) {
  const ruler = useRuler();
  const [looked, setLooked] = useState<number | null>(null);
  const told = sizes.find(({ size }) => size === (looked ?? finished));
  return (
    <>
      <RadioGroup
        className={styles.sizes ?? ''}
        orientation="horizontal"
        value={String(finished)}
        onChange={(size) => onChange(Number(size))}
      >
        <Label className="heard">Finished block, {ruler.units}</Label>
        {sizes.map(({ size, friendly }) => (
          <Radio
            key={size}
            value={String(size)}
            className={styles.size ?? ''}
            data-friendly={friendly || undefined}
            onHoverChange={(on) => setLooked(on ? size : null)}
          >
            <span aria-hidden="true">{ruler.bare(size)}</span>
            <span className="heard">
              {ruler.length(size)}, {friendly ? 'on the ruler' : 'between the marks'}
            </span>
          </Radio>
        ))}
      </RadioGroup>
      {told === undefined ? null : (
        <p className={styles.why}>
          <Mark of={told.friendly ? 'fits' : 'look'} />
          <span>
            {ruler.length(told.size)}: {told.why}
          </span>
        </p>
      )}
    </>
  );
}
