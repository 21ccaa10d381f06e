import { workOut } from '../../shared/workroom/workOut.ts';
import { writeBook } from '../../shared/writing/writeBook.ts';
import { EXIT } from './exit.ts';
import { figureFiles } from './figureFiles.ts';
import { findingsText } from './findings.ts';
import { verdict } from './fit.ts';
import { fitFacts } from './fitFacts.ts';
import { jsonText } from './json.ts';
import { openPattern } from './open.ts';
import type { Terminal } from './terminal.ts';
import { checkFolder, writeFiles } from './writeFiles.ts';

export interface FigureWishes {
  /** The folder the files go to. */
  readonly out: string;
  readonly plainInk: boolean;
}

/**
 * `piecewright figures FILE --out DIR`: every figure of the written pattern as an SVG file of its own, for a shop's page or a
 * film. As with printing, a pattern that does not fit is told of and not written.
 */
export async function runFigures(
  file: string,
  wishes: FigureWishes,
  json: boolean,
  terminal: Terminal,
): Promise<number> {
  checkFolder(wishes.out);
  const { source, pattern } = openPattern(file);
  const worked = workOut(pattern);
  const facts = fitFacts(worked);
  const told = findingsText(facts.findings, source);
  if (!facts.fits) {
    terminal.complain(`${told}\n\n${verdict(facts)} Nothing was written.`);
    return EXIT.findings;
  }
  if (told !== '') terminal.complain(told);
  const paths = await writeFiles(wishes.out, figureFiles(writeBook(worked), wishes.plainInk));
  terminal.say(json ? jsonText({ file, written: paths, findings: facts.findings }) : paths.join('\n'));
  return EXIT.fine;
}
