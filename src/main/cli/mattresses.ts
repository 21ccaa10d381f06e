import type { Mattress } from '../../shared/pattern/mattresses.ts';
import { mattressTables, readMattressTable } from '../mattressTables.ts';
import { Refused } from '../refusal.ts';
import { resources } from './program.ts';
import { readSource } from './source.ts';

/**
 * The mattress of this name.
 * @param own a file with a table of the designer's own, which is looked in first
 * @throws Refused naming those there are
 */
export function mattressNamed(name: string, own?: string): Mattress {
  const hers = own === undefined ? [] : [readMattressTable(readSource(own).text, own)];
  const all = [...hers, ...mattressTables(resources())].flatMap(({ mattresses }) => mattresses);
  const wanted = name.trim().toLowerCase();
  const found = all.find((mattress) => mattress.id === wanted || mattress.name.toLowerCase() === wanted);
  if (found !== undefined) return found;
  const names = all.map(({ id, width, length }) => `${id} (${width} × ${length})`).join(', ');
  throw new Refused('bad-input', `There is no mattress “${name}”. There are: ${names}.`);
}
