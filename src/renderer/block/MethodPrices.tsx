import { Radio, RadioGroup } from 'react-aria-components';
import { fractionOf } from '../../shared/measure/fraction.ts';
import { setHouseMethod, setMethod, setOversize } from '../../shared/pattern/edits/index.ts';
import { type MethodPrice, methodPrices } from '../../shared/workroom/methodPrices.ts';
import type { SizedUnit, WorkedBlock } from '../../shared/workroom/workedOut.ts';
import { Button } from '../parts/Button.tsx';
import { NumberField } from '../parts/NumberField.tsx';
import { Why } from '../parts/Why.tsx';
import { useAct, usePattern } from '../state/hooks.tsx';
import styles from './block.module.css';
import { CutLines } from './CutLines.tsx';
import type { ShownBlock } from './useShownBlock.ts';

interface MethodPricesProps {
  readonly shown: ShownBlock;
  readonly block: WorkedBlock;
  readonly made: SizedUnit;
  readonly grid: number;
}

/** Every way of making a unit, with what it asks for the whole quilt in this size. */
export function MethodPrices({ shown, block, made, grid }: MethodPricesProps) {
  const { house } = usePattern();
  const act = useAct();
  const { choice } = shown;
  const { unit } = made;
  const scale = { grid, seam: house.seam, step: house.step };
  // One order whichever is chosen, so that a choice never moves under the hand.
  const prices = methodPrices(made, scale, house.usableWidth, shown.sized?.units).toSorted((a, b) =>
    a.method.name.localeCompare(b.method.name, 'en'),
  );
  const own = choice.methods[unit.key] !== undefined;
  return (
    <>
      <RadioGroup
        className={styles.methods ?? ''}
        aria-label="Way of making this unit"
        value={made.method.id}
        onChange={(method) => act(setMethod, { block: choice.id, of: unit.key, method })}
      >
        {prices.map((price) => (
          <div key={price.method.id} className={styles.price}>
            <Radio value={price.method.id} className={styles.radio ?? ''}>
              {price.method.name}
            </Radio>
            <Price price={price} fabricOf={block.fabricOf} />
          </div>
        ))}
      </RadioGroup>
      {house.methods[unit.kind] === made.method.id || prices.length < 2 ? null : (
        <Button
          className={styles.start ?? ''}
          tone="bare"
          small
          onPress={() => act(setHouseMethod, { kind: unit.kind, method: made.method.id })}
        >
          Make this the house’s way
        </Button>
      )}
      {prices.some(({ plan }) => plan.trimmed) ? (
        <NumberField
          label="Cut larger by, to trim"
          value={made.oversize}
          least={0}
          most={2}
          onChange={(inches) => act(setOversize, { block: choice.id, of: unit.key, inches })}
        />
      ) : null}
      {own ? (
        <Button
          className={styles.start ?? ''}
          tone="bare"
          small
          onPress={() => act(setMethod, { block: choice.id, of: unit.key, method: null })}
        >
          Leave it to the house’s way
        </Button>
      ) : null}
    </>
  );
}

function minutesText(minutes: number): string {
  if (minutes < 90) return minutes <= 1 ? 'a minute' : `${Math.round(minutes)} minutes`;
  return `${fractionOf(Math.round(minutes / 30) / 2)} hours`;
}

function Price({ price, fabricOf }: { readonly price: MethodPrice; readonly fabricOf: WorkedBlock['fabricOf'] }) {
  const { cuts, spare, plan, cloth, pieces, trimming, waste } = price;
  return (
    <div className={styles.priceLines}>
      <CutLines cuts={cuts.map(({ cut }) => cut)} fabricOf={fabricOf} counts={cuts.map(({ count }) => count)} />
      <p className={styles.priceSums}>
        {plan.yield === 1
          ? 'One at a time'
          : `${plan.yield} at a time${plan.hand === undefined ? '' : ', of one hand'}`}
        {', '}
        {spare === 0 ? 'none to spare' : `${spare} to spare`}
        {', '}
        <Why traced={cloth} /> of cloth
      </p>
      <p className={styles.priceSums}>
        <Why traced={pieces}>{pieces.value === 1 ? '1 piece' : `${pieces.value} pieces`}</Why>
        {', '}
        {trimming.value === 0 ? (
          'nothing to trim'
        ) : (
          <>
            <Why traced={trimming}>{minutesText(trimming.value)}</Why> of trimming
          </>
        )}
        {', '}
        <Why traced={waste} /> left over
      </p>
    </div>
  );
}
