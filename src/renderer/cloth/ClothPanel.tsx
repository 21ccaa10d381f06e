import { type Inches, same } from '../../shared/measure/inches.ts';
import { CENTIMETRE, type Units } from '../../shared/measure/metric.ts';
import { setHouse } from '../../shared/pattern/edits/index.ts';
import { PanelPart, SidePanel } from '../app/SidePanel.tsx';
import { Choice } from '../parts/Choice.tsx';
import { NumberField } from '../parts/NumberField.tsx';
import { useAct, usePattern, useRuler, useStudio } from '../state/hooks.tsx';
import { AddFabric } from './AddFabric.tsx';

/** The marks rulers are made with, and how cloth is sold. */
const MARKS: Readonly<Record<Units, readonly Inches[]>> = {
  inches: [1 / 16, 1 / 8, 1 / 4],
  centimetres: [CENTIMETRE / 20, CENTIMETRE / 10, CENTIMETRE / 2],
};

const YARDS = [
  { id: '0.125', says: '⅛ yd' },
  { id: '0.25', says: '¼ yd' },
  { id: '0.5', says: '½ yd' },
] as const;

/** What the pattern assumes of cloth and ruler. */
export function ClothPanel() {
  const { house } = usePattern();
  const act = useAct();
  const metric = useRuler().units === 'centimetres';
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
      {metric ? (
        <p className="quiet small">Cloth is rounded up to a tenth of a metre.</p>
      ) : (
        <Choice
          label="Yards are rounded up to"
          value={String(house.yardStep)}
          options={YARDS}
          onChange={(step) => act(setHouse, { yardStep: Number(step) })}
        />
      )}
      <PanelPart title="Seam and ruler">
        <NumberField
          label="Seam allowance"
          value={house.seam}
          least={0.0625}
          most={1}
          step={0.0625}
          onChange={(seam) => act(setHouse, { seam }, 'seam')}
        />
        <RulerFields step={house.step} />
      </PanelPart>
      <AddFabric />
    </SidePanel>
  );
}

const UNITS = [
  { id: 'inches', says: 'Inches' },
  { id: 'centimetres', says: 'Centimetres' },
] as const;

/** Which ruler the house has. The other one makes another quilt, so what it would be is said before. */
function RulerFields({ step }: { readonly step: Inches }) {
  const studio = useStudio();
  const ruler = useRuler();
  const marks = MARKS[ruler.units];
  return (
    <>
      <Choice
        label="The ruler measures in"
        value={ruler.units}
        options={UNITS}
        onChange={(units) => units !== ruler.units && studio.openDialog('ruler')}
      />
      <Choice
        label="Marks of the ruler"
        value={String(marks.find((mark) => same(mark, step)) ?? step)}
        options={marks.map((mark) => ({ id: String(mark), says: ruler.length(mark) }))}
        onChange={(mark) => studio.act(setHouse, { step: Number(mark) })}
      />
    </>
  );
}
