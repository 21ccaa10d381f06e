import type { Cliff } from '../../shared/cloth/cliffs.ts';
import { inchesText, yardsText } from '../../shared/measure/fraction.ts';
import { unitsOn } from '../../shared/measure/metric.ts';
import type { Pattern } from '../../shared/pattern/schema.ts';
import { tableText } from './table.ts';

/** What each fabric takes as the cloth is wider or narrower; the widths at which what is bought changes have a star. */
export function cliffText(cliffs: readonly Cliff[], { fabrics, house }: Pattern): string {
  const units = unitsOn(house.step);
  const widths = cliffs[0]?.at.map(({ width }) => width) ?? [];
  if (widths.length === 0) return '';
  const nameOf = (fabric: string) => fabrics.find(({ id }) => id === fabric)?.name ?? fabric;
  const rows = cliffs.map(({ fabric, at, yardsBelow }) => [
    nameOf(fabric),
    ...at.map(({ width, yards }) => `${yardsText(yards.value, units)}${yardsBelow.includes(width) ? ' *' : ''}`),
  ]);
  const columns = [
    { title: 'Usable width' },
    ...widths.map((width) => ({ title: inchesText(width, units), align: 'right' as const })),
  ];
  const table = tableText(columns, rows, 4);
  const star = cliffs.some(({ yardsBelow }) => yardsBelow.length > 0) ? '\n    * below this width it takes more' : '';
  return `  Where narrower cloth takes more\n\n${table}${star}`;
}
