import { CENTIMETRE, METRE, type Units } from '../../../shared/measure/metric.ts';
import { setFabricPrice, setFabricSheet } from '../../../shared/pattern/edits/index.ts';
import type { Fabric } from '../../../shared/pattern/schema.ts';
import { PanelPart } from '../../app/SidePanel.tsx';
import { useAct, useRuler } from '../../state/hooks.tsx';
import { Choice } from '../Choice.tsx';
import { NumberField } from '../NumberField.tsx';
import { TextField } from '../TextField.tsx';

type Sheet = NonNullable<Fabric['sheet']>;

/** What may be counted on of a fat quarter, of a yard or of a metre of cloth (common practice). */
const FAT_QUARTERS: Readonly<Record<Units, Sheet>> = {
  inches: { name: 'fat quarter', width: 18, height: 21 },
  centimetres: { name: 'fat quarter', width: 48 * CENTIMETRE, height: 53 * CENTIMETRE },
};

/** How one fabric is bought: by the yard or in sheets, and at what price. */
export function BoughtPart({ fabric }: { readonly fabric: Fabric }) {
  const act = useAct();
  const { units, clothUnit } = useRuler();
  const { id, sheet, price } = fabric;
  // A price is kept for a yard; a shop that sells by the metre has one for a metre.
  const sold = units === 'centimetres' && sheet === undefined ? 1 / METRE : 1;
  return (
    <PanelPart title="How it is bought">
      <Choice
        label="Bought"
        bare
        value={sheet === undefined ? 'yards' : 'sheets'}
        options={[
          { id: 'yards', says: `By the ${clothUnit}` },
          { id: 'sheets', says: 'In sheets' },
        ]}
        onChange={(way) => act(setFabricSheet, { fabric: id, sheet: way === 'yards' ? null : FAT_QUARTERS[units] })}
      />
      {sheet === undefined ? null : <SheetFields fabric={id} sheet={sheet} />}
      <NumberField
        label={sheet === undefined ? `Price of a ${clothUnit}` : `Price of one ${sheet.name}`}
        unit="plain"
        value={(price ?? 0) / sold}
        least={0}
        most={100_000}
        help="0 while it is not known."
        onChange={(value) =>
          act(setFabricPrice, { fabric: id, price: value === 0 ? null : value * sold }, `price ${id}`)
        }
      />
    </PanelPart>
  );
}

function SheetFields({ fabric, sheet }: { readonly fabric: string; readonly sheet: Sheet }) {
  const act = useAct();
  const change = (part: Partial<Sheet>) => act(setFabricSheet, { fabric, sheet: { ...sheet, ...part } });
  return (
    <>
      <TextField
        label="What one is called"
        value={sheet.name}
        needed="A sheet needs a name."
        onChange={(name) => change({ name })}
      />
      <NumberField
        label="Width to be counted on"
        value={sheet.width}
        least={1}
        most={120}
        onChange={(width) => change({ width })}
      />
      <NumberField
        label="Height to be counted on"
        value={sheet.height}
        least={1}
        most={120}
        onChange={(height) => change({ height })}
      />
    </>
  );
}
