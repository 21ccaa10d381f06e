import { readdirSync } from 'node:fs';
import { join, relative } from 'node:path';
import { workOut } from '../../shared/workroom/workOut.ts';
import { editionFiles, type Printing } from './edition.ts';
import { EXIT } from './exit.ts';
import { fitText, verdict } from './fit.ts';
import { fitFacts, type PatternFit } from './fitFacts.ts';
import { jsonText } from './json.ts';
import { openPattern } from './open.ts';
import { resources } from './program.ts';
import { tableText } from './table.ts';
import type { Terminal } from './terminal.ts';
import { checkFolder, writeFiles } from './writeFiles.ts';

const PRINTINGS: readonly Printing[] = [
  { paper: 'letter', plainInk: false },
  { paper: 'a4', plainInk: false },
  { paper: 'letter', plainInk: true },
];

/** A page for reading, whatever the terminal. */
const WIDTH = 100;

const ENDING = '.pattern.json';

/** `piecewright demo`: the demo patterns' PDFs, charts and findings, and what was made. */
export async function runDemo(out: string, json: boolean, terminal: Terminal): Promise<number> {
  checkFolder(out);
  const folder = join(resources(), 'demo');
  const names = readdirSync(folder).filter((name) => name.endsWith(ENDING));
  const files = new Map<string, Uint8Array>();
  const all: PatternFit[] = [];
  for (const [i, name] of names.sort().entries()) {
    const { source, pattern } = openPattern(relative(process.cwd(), join(folder, name)));
    const worked = workOut(pattern);
    const facts = fitFacts(worked);
    all.push(facts);
    for (const [file, bytes] of await editionFiles(worked, pattern, PRINTINGS, false)) files.set(file, bytes);
    const findings = i === 0 ? 'findings' : `${pattern.id}-findings`;
    files.set(`${findings}.txt`, Buffer.from(`${fitText(facts, source, WIDTH)}\n`));
    files.set(`${findings}.json`, Buffer.from(`${jsonText({ file: source.path, ...facts }, facts.units)}\n`));
  }
  await writeFiles(out, files);
  const fits = all.every((facts) => facts.fits);
  terminal.say(json ? jsonText({ folder: out, written: sizesOf(files), fits }) : madeText(out, files, all));
  return fits ? EXIT.fine : EXIT.findings;
}

function sizesOf(files: ReadonlyMap<string, Uint8Array>): readonly { readonly name: string; readonly bytes: number }[] {
  return [...files].map(([name, bytes]) => ({ name, bytes: bytes.length }));
}

function madeText(out: string, files: ReadonlyMap<string, Uint8Array>, all: readonly PatternFit[]): string {
  const rows = sizesOf(files).map(({ name, bytes }) => [name, `${Math.ceil(bytes / 1000).toLocaleString('en')} kB`]);
  const table = tableText([{ title: '' }, { title: '', align: 'right' }], rows);
  const verdicts = all.map((facts) => `${facts.title}, edition ${facts.edition}. ${verdict(facts)}`);
  return `In ${out}\n\n${table}\n\n${verdicts.join('\n')}`;
}
