import type { KitSheet } from '../../../shared/cloth/kit.ts';
import { yardsText } from '../../../shared/measure/fraction.ts';
import { explain } from '../../../shared/measure/traced.ts';
import type { Pattern } from '../../../shared/pattern/schema.ts';
import { csvText } from '../../../shared/writing/csv.ts';

const HEAD = ['Order', 'Fabric', 'For', 'Kits', 'Yards each', 'Each', 'Yards from the bolt', 'From the bolt', 'Sum'];

/** The kit sheet as a table: bolt cuts in the order they are made, then what else lies in a kit. */
export function kitCsv({ kits, cloth, bundles }: KitSheet, { fabrics }: Pattern, size: string): string {
  const nameOf = (id: string) => fabrics.find((fabric) => fabric.id === id)?.name ?? id;
  const cuts = cloth.map(({ fabric, uses, each, bolt }, i) => [
    i + 1,
    nameOf(fabric),
    `${uses.join(', ')} (${size})`,
    kits,
    each.value,
    yardsText(each.value),
    bolt.value,
    yardsText(bolt.value),
    explain(bolt),
  ]);
  const rest =
    bundles === 0 ? [] : [['', 'Bundles of strips', size, kits, '', `${bundles / kits}`, '', `${bundles}`, '']];
  return csvText(HEAD, [...cuts, ...rest]);
}

/** "harbour-lights-lap-12-kits.csv". */
export function kitFileName({ id }: Pattern, size: string, kits: number): string {
  const plain = size.toLowerCase().replace(/[^a-z0-9]+/g, '-');
  return `${id}-${plain}-${kits}-kits.csv`;
}
