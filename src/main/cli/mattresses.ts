import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { schemaFindings } from '../../shared/pattern/issues.ts';
import { type Mattress, type MattressTable, mattressTableSchema } from '../../shared/pattern/mattresses.ts';
import { Refused } from '../refusal.ts';
import { resources } from './program.ts';
import { readSource } from './source.ts';

const ENDING = '.mattresses.json';

/** The tables of mattresses that come with the program. */
export function mattressTables(): readonly MattressTable[] {
  const folder = join(resources(), 'mattresses');
  return readdirSync(folder)
    .filter((name) => name.endsWith(ENDING))
    .sort()
    .map((name) => tableIn(join(folder, name)));
}

/**
 * The mattress of this name.
 * @param own a file with a table of the designer's own, which is looked in first
 * @throws Refused naming those there are
 */
export function mattressNamed(name: string, own?: string): Mattress {
  const tables = [...(own === undefined ? [] : [tableIn(own)]), ...mattressTables()];
  const all = tables.flatMap(({ mattresses }) => mattresses);
  const wanted = name.trim().toLowerCase();
  const found = all.find((mattress) => mattress.id === wanted || mattress.name.toLowerCase() === wanted);
  if (found !== undefined) return found;
  const names = all.map(({ id, width, length }) => `${id} (${width} × ${length})`).join(', ');
  throw new Refused('bad-input', `There is no mattress “${name}”. There are: ${names}.`);
}

function tableIn(path: string): MattressTable {
  const { text } = readSource(path);
  const read = mattressTableSchema.safeParse(parsed(text, path), { reportInput: true });
  if (read.success) return read.data;
  const [first] = schemaFindings(read.error.issues);
  throw new Refused('bad-input', `${path}: ${first?.what ?? 'This is no table of mattresses.'}`);
}

function parsed(text: string, path: string): unknown {
  try {
    const value: unknown = JSON.parse(text);
    if (typeof value !== 'object' || value === null) return value;
    // Which schema a text editor holds the file against is no part of the document.
    const { $schema: _schema, ...document } = value as Record<string, unknown>;
    return document;
  } catch {
    throw new Refused('bad-input', `${path}: This is not JSON.`);
  }
}
