import { setHouse } from '../../shared/pattern/edits/index.ts';
import { PanelPart, SidePanel } from '../app/SidePanel.tsx';
import { Choice } from '../parts/Choice.tsx';
import { NumberField } from '../parts/NumberField.tsx';
import { useAct, usePattern } from '../state/hooks.tsx';
import { AddFabric } from './AddFabric.tsx';

const STEPS = [
  { id: '0.0625', says: '1⁄16″' },
  { id: '0.125', says: '⅛″' },
  { id: '0.25', says: '¼″' },
] as const;

const YARDS = [
  { id: '0.125', says: '⅛ yd' },
  { id: '0.25', says: '¼ yd' },
  { id: '0.5', says: '½ yd' },
] as const;

/** What the pattern assumes of cloth and ruler. */
export function ClothPanel() {
  const { house } = usePattern();
  const act = useAct();
  return (
    <SidePanel title="All the cloth" kind="What the pattern assumes">
      <NumberField
        label="Usable width of the cloth"
        value={house.usableWidth}
        least={10}
        most={130}
        step={0.5}
        help="The narrowest the pattern is good for, without selvages."
        onChange={(usableWidth) => act(setHouse, { usableWidth }, 'usable width')}
      />
      <NumberField
        label="For squaring up the cut end"
        value={house.squaring}
        least={0}
        most={36}
        step={0.5}
        onChange={(squaring) => act(setHouse, { squaring }, 'squaring')}
      />
      <Choice
        label="Yards are rounded up to"
        value={String(house.yardStep)}
        options={YARDS}
        onChange={(step) => act(setHouse, { yardStep: Number(step) })}
      />
      <PanelPart title="Seam and ruler">
        <NumberField
          label="Seam allowance"
          value={house.seam}
          least={0.0625}
          most={1}
          step={0.0625}
          onChange={(seam) => act(setHouse, { seam }, 'seam')}
        />
        <Choice
          label="Marks of the ruler"
          value={String(house.step)}
          options={STEPS}
          onChange={(step) => act(setHouse, { step: Number(step) })}
        />
      </PanelPart>
      <AddFabric />
    </SidePanel>
  );
}
