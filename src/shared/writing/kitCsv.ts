import type { KitSheet } from '../cloth/kit.ts';
import { yardsText } from '../measure/fraction.ts';
import { METRE, type Units, unitsOn } from '../measure/metric.ts';
import { explain } from '../measure/traced.ts';
import type { Pattern } from '../pattern/schema.ts';
import { csvText } from './csv.ts';

const HEAD: Readonly<Record<Units, readonly string[]>> = {
  inches: ['Order', 'Fabric', 'For', 'Kits', 'Yards each', 'Each', 'Yards from the bolt', 'From the bolt', 'Sum'],
  centimetres: [
    'Order',
    'Fabric',
    'For',
    'Kits',
    'Metres each',
    'Each',
    'Metres from the bolt',
    'From the bolt',
    'Sum',
  ],
};

/** The kit sheet as a table: bolt cuts in the order they are made, then what is counted out. */
export function kitCsv({ kits, cloth, counted }: KitSheet, { fabrics, house }: Pattern, size: string): string {
  const units = unitsOn(house.step);
  const nameOf = (id: string) => fabrics.find((fabric) => fabric.id === id)?.name ?? id;
  const long = (yards: number) => (units === 'inches' ? yards : Number((yards / METRE).toFixed(2)));
  const cuts = cloth.map(({ fabric, uses, each, bolt }, i) => [
    i + 1,
    nameOf(fabric),
    `${uses.join(', ')} (${size})`,
    kits,
    long(each.value),
    yardsText(each.value, units),
    long(bolt.value),
    yardsText(bolt.value, units),
    explain(bolt, units),
  ]);
  const rest = counted.map(({ fabric, what, each, all }) => {
    const name = fabric === null ? '' : nameOf(fabric);
    return ['', name, `${what} (${size})`, kits, '', `${each.value}`, '', `${all.value}`, explain(all, units)];
  });
  return csvText(HEAD[units], [...cuts, ...rest]);
}
