import { useMemo, useState } from 'react';
import { Label, Radio, RadioGroup } from 'react-aria-components';
import { fractionOf, inchesText } from '../../../shared/measure/fraction.ts';
import { setSizeBlock, setUsualSize } from '../../../shared/pattern/edits/index.ts';
import type { Piecing } from '../../../shared/piecing/piecing.ts';
import { ASKED_SIZES, type RulerSize, rulerFriendlySizes } from '../../../shared/piecing/rulerSizes.ts';
import { PanelPart } from '../../app/SidePanel.tsx';
import { Mark } from '../../parts/Mark.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { useAct, usePattern } from '../../state/hooks.tsx';
import type { ShownBlock } from '../useShownBlock.ts';
import styles from './panel.module.css';

/** Sizes up to here are offered; any other may be typed. */
const OFFERED = ASKED_SIZES.filter((size) => size >= 3 && size <= 18);

interface SizePartProps {
  readonly shown: ShownBlock;
  readonly piecing: Piecing;
}

/** How large the block is made: sizes at which everything in it falls on the ruler's marks stand out. */
export function SizePart({ shown, piecing }: SizePartProps) {
  const { house } = usePattern();
  const act = useAct();
  const { size, recipe, choice } = shown;
  const finished = (shown.sized === undefined ? recipe?.finished : size?.quilt.block.width) ?? 0;
  const sizes = useMemo(
    () => rulerFriendlySizes(piecing, house.step, withOne(OFFERED, finished)),
    [piecing, house.step, finished],
  );
  const change = (block: number) => {
    if (size !== null && shown.sized !== undefined) act(setSizeBlock, { size: size.size.id, block });
    else if (recipe !== undefined) act(setUsualSize, { recipe: recipe.id, finished: block });
  };
  const title =
    size !== null && shown.sized !== undefined ? `Finished block in ${size.size.name}` : 'Usual finished size';
  // Whole inches, the one chosen, and the half inches that are on the ruler.
  const shownSizes = sizes.filter((one) => Number.isInteger(one.size) || one.friendly || one.size === finished);
  return (
    <PanelPart title={title}>
      <RulerSizes key={choice.id} sizes={shownSizes} finished={finished} onChange={change} />
      <NumberField label="Another size" value={finished} least={0.5} most={120} onChange={change} />
    </PanelPart>
  );
}

function withOne(sizes: readonly number[], one: number): readonly number[] {
  return sizes.includes(one) || one <= 0 ? sizes : [...sizes, one].sort((a, b) => a - b);
}

interface RulerSizesProps {
  readonly sizes: readonly RulerSize[];
  readonly finished: number;
  readonly onChange: (size: number) => void;
}

/** Sizes side by side as on a ruler, those that are friendly with a mark of their own; below, why one is or is not. */
function RulerSizes({ sizes, finished, onChange }: RulerSizesProps) {
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
        <Label className="heard">Finished block, inches</Label>
        {sizes.map(({ size, friendly }) => (
          <Radio
            key={size}
            value={String(size)}
            className={styles.size ?? ''}
            data-friendly={friendly || undefined}
            onHoverChange={(on) => setLooked(on ? size : null)}
          >
            <span aria-hidden="true">{fractionOf(size)}</span>
            <span className="heard">
              {inchesText(size)}, {friendly ? 'on the ruler' : 'between the marks'}
            </span>
          </Radio>
        ))}
      </RadioGroup>
      {told === undefined ? null : (
        <p className={styles.why}>
          <Mark of={told.friendly ? 'fits' : 'look'} />
          <span>
            {inchesText(told.size)}: {told.why}
          </span>
        </p>
      )}
    </>
  );
}
