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

/** `piecewright demo`: the demo pattern's PDFs, charts and findings, and what was made. */
export async function runDemo(out: string, json: boolean, terminal: Terminal): Promise<number> {
  checkFolder(out);
  const file = relative(process.cwd(), join(resources(), 'demo', 'harbour-lights.pattern.json'));
  const { source, pattern } = openPattern(file);
  const worked = workOut(pattern);
  const facts = fitFacts(worked);
  const made = await editionFiles(worked, pattern, PRINTINGS, false);
  const files = new Map(made);
  files.set('findings.txt', Buffer.from(`${fitText(facts, source, WIDTH)}\n`));
  files.set('findings.json', Buffer.from(`${jsonText({ file: source.path, ...facts })}\n`));
  await writeFiles(out, files);
  terminal.say(
    json ? jsonText({ folder: out, written: sizesOf(files), fits: facts.fits }) : madeText(out, files, facts),
  );
  return facts.fits ? EXIT.fine : EXIT.findings;
}

function sizesOf(files: ReadonlyMap<string, Uint8Array>): readonly { readonly name: string; readonly bytes: number }[] {
  return [...files].map(([name, bytes]) => ({ name, bytes: bytes.length }));
}

function madeText(out: string, files: ReadonlyMap<string, Uint8Array>, facts: PatternFit): string {
  const rows = sizesOf(files).map(({ name, bytes }) => [name, `${Math.ceil(bytes / 1000).toLocaleString('en')} kB`]);
  const table = tableText([{ title: '' }, { title: '', align: 'right' }], rows);
  return `${facts.title}, edition ${facts.edition}, in ${out}\n\n${table}\n\n${verdict(facts)}`;
}
