// Measures every row of every `*.bench.ts` beside this file and prints the README's table. Medians on this machine, for
// people to read: nothing fails here, because a busy machine is no bug. Words after the command choose rows by name.
import { globSync } from 'node:fs';
import { cpus } from 'node:os';
import type { Row, Table } from './row.ts';

const wanted = process.argv.slice(2).map((word) => word.toLowerCase());
const isWanted = (what: string) => wanted.length === 0 || wanted.some((word) => what.toLowerCase().includes(word));
const tables: Table[] = [];
const shown = (value: number, unit: string) =>
  `${value >= 100 ? Math.round(value).toLocaleString('en') : value.toPrecision(2)} ${unit}`;

console.log(`Node ${process.version}, ${cpus().length} cores of ${cpus()[0]?.model ?? 'unknown make'}\n`);
console.log('| what | measured | budget | |\n|---|---|---|---|');
for (const file of globSync('*.bench.ts', { cwd: import.meta.dirname }).sort()) {
  const measures: { rows: readonly Row[]; tables?: readonly Table[] } = await import(`./${file}`);
  tables.push(...(measures.tables ?? []));
  for (const { what, budget, unit = 'ms', measure } of measures.rows) {
    if (!isWanted(what)) continue;
    const value = await measure();
    const verdict = value <= budget ? 'within' : 'over';
    console.log(`| ${what} | ${shown(value, unit)} | ${shown(budget, unit)} | ${verdict} |`);
  }
}
for (const { title, head, rows } of tables.filter((table) => isWanted(table.title))) {
  console.log(`\n${title}\n\n| ${head.join(' | ')} |\n|${head.map(() => '---').join('|')}|`);
  for await (const row of rows()) console.log(`| ${row.join(' | ')} |`);
}
