import type { Paper } from '../../shared/contract.ts';
import { workOut } from '../../shared/workroom/workOut.ts';
import { Refused } from '../refusal.ts';
import { editionFiles, type Named, oneSize } from './edition.ts';
import { EXIT } from './exit.ts';
import { findingsText } from './findings.ts';
import { verdict } from './fit.ts';
import { fitFacts } from './fitFacts.ts';
import { jsonText } from './json.ts';
import { openPattern } from './open.ts';
import type { Terminal } from './terminal.ts';
import { checkFolder, writeFiles } from './writeFiles.ts';

export interface PublishWishes {
  /** The folder the files go to. */
  readonly out: string;
  readonly papers: readonly Paper[];
  /** Only this size. */
  readonly size?: string;
  readonly plainInk: boolean;
  readonly draft: boolean;
}

/**
 * `piecewright publish FILE --out DIR`: one PDF for each paper and the charts as CSV. A pattern that does not fit is told
 * of and not written, unless it is to be a draft.
 */
export async function runPublish(
  file: string,
  wishes: PublishWishes,
  json: boolean,
  terminal: Terminal,
): Promise<number> {
  checkFolder(wishes.out);
  const { source, pattern: whole } = openPattern(file);
  const pattern = wishes.size === undefined ? whole : oneSize(whole, wishes.size);
  const worked = workOut(pattern);
  const facts = fitFacts(worked);
  const told = findingsText(facts.findings, source);
  // Not even a draft can be made of nothing.
  if (worked.sizes.length === 0 || (!facts.fits && !wishes.draft)) {
    terminal.complain(`${told}\n\n${verdict(facts)} Nothing was written.`);
    return EXIT.findings;
  }
  if (told !== '') terminal.complain(told);
  const title = pattern === whole ? pattern.title : `${pattern.title} ${pattern.sizes[0]?.name ?? ''}`;
  const named: Named = { ...pattern, title };
  const printings = wishes.papers.map((paper) => ({ paper, plainInk: wishes.plainInk }));
  const files = await naming(file, editionFiles(worked, named, printings, wishes.draft));
  const paths = await writeFiles(wishes.out, files);
  terminal.say(
    json ? jsonText({ file, fits: facts.fits, written: paths, findings: facts.findings }) : paths.join('\n'),
  );
  return EXIT.fine;
}

/** What the paper refuses is told with the name of the file. */
async function naming<T>(file: string, work: Promise<T>): Promise<T> {
  try {
    return await work;
  } catch (error) {
    throw error instanceof Refused ? new Refused(error.kind, `${file}: ${error.words}`, error.findings) : error;
  }
}
