import type { Paper } from '../../shared/contract.ts';
import { kitIn } from '../../shared/workroom/clothWays.ts';
import type { WorkedOut, WorkedSize } from '../../shared/workroom/workedOut.ts';
import { workOut } from '../../shared/workroom/workOut.ts';
import { kitCsv } from '../../shared/writing/kitCsv.ts';
import { kitFileName, writeKitSheet } from '../../shared/writing/kitSheet.ts';
import { makePdf } from '../paper/makePdf.ts';
import { swatchPictures } from '../photograph/swatch.ts';
import { kitPdfName } from '../publish/publication.ts';
import { oneSize } from './edition.ts';
import { EXIT } from './exit.ts';
import { findingsText } from './findings.ts';
import { verdict } from './fit.ts';
import { fitFacts } from './fitFacts.ts';
import { jsonText } from './json.ts';
import { openPattern } from './open.ts';
import type { Terminal } from './terminal.ts';
import { checkFolder, writeFiles } from './writeFiles.ts';

export interface KitWishes {
  readonly kits: number;
  /** The folder the files go to. */
  readonly out: string;
  readonly papers: readonly Paper[];
  /** Only this size; each on a sheet of its own where none is named. */
  readonly size?: string;
  readonly plainInk: boolean;
}

/**
 * `piecewright kit FILE --kits 12 --out DIR`: the sheet a shop puts kits together by, as PDF for each paper and as a table.
 * A pattern that does not fit is told of, and nothing is written.
 */
export async function runKit(file: string, wishes: KitWishes, json: boolean, terminal: Terminal): Promise<number> {
  checkFolder(wishes.out);
  const { source, pattern: whole } = openPattern(file);
  const pattern = wishes.size === undefined ? whole : oneSize(whole, wishes.size);
  const worked = workOut(pattern);
  const facts = fitFacts(worked);
  const told = findingsText(facts.findings, source);
  if (worked.sizes.length === 0 || !facts.fits) {
    terminal.complain(`${told}\n\n${verdict(facts)} Nothing was written.`);
    return EXIT.findings;
  }
  if (told !== '') terminal.complain(told);
  const files = new Map<string, Uint8Array>();
  for (const size of worked.sizes)
    for (const [name, bytes] of await sheetFiles(worked, size, wishes)) files.set(name, bytes);
  const paths = await writeFiles(wishes.out, files);
  const sheets = worked.sizes.map((size) => ({ size: size.size.name, ...kitIn(worked, size, wishes.kits) }));
  terminal.say(json ? jsonText({ file, written: paths, sheets }, facts.units) : paths.join('\n'));
  return EXIT.fine;
}

async function sheetFiles(
  worked: WorkedOut,
  size: WorkedSize,
  { kits, papers, plainInk }: KitWishes,
): Promise<ReadonlyMap<string, Uint8Array>> {
  const { pattern } = worked;
  const book = writeKitSheet(worked, size, kits);
  const swatches = await swatchPictures(pattern);
  const files = new Map<string, Uint8Array>();
  for (const paper of papers) {
    const how = { paper, plainInk, draft: false };
    files.set(kitPdfName(pattern, { size: size.size.id, many: kits }, how), await makePdf(book, { ...how, swatches }));
  }
  const table = kitCsv(kitIn(worked, size, kits), pattern, size.size.name);
  files.set(`${kitFileName(pattern, size.size.name, kits)}.csv`, Buffer.from(table));
  return files;
}
