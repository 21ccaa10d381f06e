import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { schemaFindings } from '../shared/pattern/issues.ts';
import { type MattressTable, mattressTableSchema } from '../shared/pattern/mattresses.ts';
import { Refused } from './refusal.ts';

const ENDING = '.mattresses.json';

/** The tables of mattresses that come with the program. @param resources its folder of that name */
export function mattressTables(resources: string): readonly MattressTable[] {
  const folder = join(resources, 'mattresses');
  if (!existsSync(folder)) return [];
  return readdirSync(folder)
    .filter((name) => name.endsWith(ENDING))
    .sort()
    .map((name) => readMattressTable(readFileSync(join(folder, name), 'utf8'), name));
}

/** A table from its text. @throws Refused naming the file and what is wrong with it */
export function readMattressTable(text: string, name: string): MattressTable {
  const read = mattressTableSchema.safeParse(parsed(text, name), { reportInput: true });
  if (read.success) return read.data;
  const findings = schemaFindings(read.error.issues);
  const what = findings[0]?.what ?? 'This is no table of mattresses.';
  throw new Refused('bad-input', `${name}: ${what}`, findings);
}

function parsed(text: string, name: string): unknown {
  try {
    const value: unknown = JSON.parse(text);
    if (typeof value !== 'object' || value === null) return value;
    // Which schema a text editor holds the file against is no part of the document.
    const { $schema: _schema, ...document } = value as Record<string, unknown>;
    return document;
  } catch {
    throw new Refused('bad-input', `${name}: This is not JSON.`);
  }
}
