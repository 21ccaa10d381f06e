// Measures every row of every `*.bench.ts` beside this file and prints the README's table. Medians on this machine, for
// people to read: nothing fails here, because a busy machine is no bug. Words after the command choose rows by name.
import { globSync } from 'node:fs';
import { cpus } from 'node:os';
import type { Row } from './row.ts';

const wanted = process.argv.slice(2).map((word) => word.toLowerCase());
const shown = (value: number, unit: string) =>
  `${value >= 100 ? Math.round(value).toLocaleString('en') : value.toPrecision(2)} ${unit}`;

console.log(`Node ${process.version}, ${cpus().length} cores of ${cpus()[0]?.model ?? 'unknown make'}\n`);
console.log('| what | measured | budget | |\n|---|---|---|---|');
for (const file of globSync('*.bench.ts', { cwd: import.meta.dirname }).sort()) {
  const { rows }: { rows: readonly Row[] } = await import(`./${file}`);
  for (const { what, budget, unit = 'ms', measure } of rows) {
    if (wanted.length > 0 && !wanted.some((word) => what.toLowerCase().includes(word))) continue;
    const value = await measure();
    const verdict = value <= budget ? 'within' : 'over';
    console.log(`| ${what} | ${shown(value, unit)} | ${shown(budget, unit)} | ${verdict} |`);
  }
}
