import { useState } from 'react';
import type { Border } from '../../../shared/pattern/schema.ts';
import type { Closing, Closings } from '../../../shared/quilt/find/closeBorder.ts';
import { closingsOf } from '../../../shared/quilt/find/closingsOf.ts';
import { closingWords } from '../../../shared/quilt/find/closingWords.ts';
import type { LaidUnits } from '../../../shared/quilt/quilt.ts';
import { PanelPart } from '../../app/SidePanel.tsx';
import { Button } from '../../parts/Button.tsx';
import { FabricPick } from '../../parts/FabricPick.tsx';
import { Mark } from '../../parts/Mark.tsx';
import { useCurrentSize, usePattern, useRuler, useStudio, useWorked } from '../../state/hooks.tsx';
import styles from '../quilt.module.css';
import { closingAct } from './closingActs.ts';

/** Whether a border of blocks closes in the size looked at, and every way to make it, the smallest change first. */
export function ClosingsPart({ border }: { readonly border: Border }) {
  const { house } = usePattern();
  const worked = useCurrentSize();
  if (worked === null || border.pieced === undefined) return null;
  const units = worked.quilt.borders.find((one) => one.border === border.id)?.units;
  const closings = closingsOf(worked.quilt, border.id, house);
  if (units === undefined || closings === null) return null;
  return (
    <PanelPart title={`How it closes in ${worked.size.name}`}>
      {closings.closes ? <Closes units={units} /> : <Ways border={border} closings={closings} />}
    </PanelPart>
  );
}

function Closes({ units }: { readonly units: LaidUnits }) {
  return (
    <p className={styles.closes}>
      <Mark of="fits" /> {units.across} units along the top and {units.down} along the sides.
    </p>
  );
}

const FIRST = 3;

function Ways({ border, closings }: { readonly border: Border; readonly closings: Closings }) {
  const { fabrics } = usePattern();
  const light = (fabrics.find(({ value }) => value === 'light') ?? fabrics[0])?.id ?? '';
  const [fabric, setFabric] = useState(light);
  const [all, setAll] = useState(false);
  const friendly = closings.units.filter((one) => one.friendly);
  const others = closings.units.filter((one) => !one.friendly);
  const shown = (ways: readonly Closing[]) => (all ? ways : ways.slice(0, FIRST));
  const more = [closings.spacers, [...friendly, ...others], closings.changes].some((ways) => ways.length > FIRST);
  return (
    <>
      <p className={styles.closes}>
        <Mark of="stops" /> It does not close: whole units are longer or shorter than its sides.
      </p>
      <WaysOf title="Plain strips inside it" ways={shown(closings.spacers)} border={border} fabric={fabric}>
        <FabricPick label="Fabric of the strips" value={fabric} onChange={setFabric} />
      </WaysOf>
      <WaysOf title="Units of another size" ways={shown([...friendly, ...others])} border={border} fabric={fabric} />
      <WaysOf title="The quilt inside it changed" ways={shown(closings.changes)} border={border} fabric={fabric} />
      {more ? (
        <Button small className={styles.start ?? ''} onPress={() => setAll(!all)}>
          {all ? 'Fewer ways' : 'More ways'}
        </Button>
      ) : null}
    </>
  );
}

interface WaysOfProps {
  readonly title: string;
  readonly ways: readonly Closing[];
  readonly border: Border;
  readonly fabric: string;
  readonly children?: React.ReactNode;
}

let presses = 0;

function WaysOf({ title, ways, border, fabric, children }: WaysOfProps) {
  const ruler = useRuler();
  const studio = useStudio();
  const worked = useWorked();
  const size = useCurrentSize();
  if (ways.length === 0 || worked === null || size === null) return null;
  const press = (run: NonNullable<ReturnType<typeof closingAct>>['run']) => {
    presses += 1;
    run(studio, `close ${presses}`);
  };
  return (
    <section className={styles.ways} aria-label={title}>
      <h4>{title}</h4>
      {children}
      <ul>
        {ways.map((way) => {
          const words = closingWords(way, ruler.length);
          const act = closingAct(way, { worked, size, border, fabric });
          return (
            <li key={words}>
              <p>{words}</p>
              {act === null ? null : (
                <Button small aria-label={`${act.says}: ${words}`} onPress={() => press(act.run)}>
                  {act.says}
                </Button>
              )}
            </li>
          );
        })}
      </ul>
    </section>
  );
}
