import type { WorkedOut } from '../../shared/workroom/workedOut.ts';
import { workOut } from '../../shared/workroom/workOut.ts';
import { cutText } from './cutText.ts';
import { EXIT } from './exit.ts';
import { findingsText } from './findings.ts';
import { verdict } from './fit.ts';
import { fitFacts, type PatternFit } from './fitFacts.ts';
import { jsonText } from './json.ts';
import { openPattern } from './open.ts';
import type { Terminal } from './terminal.ts';

/** `piecewright cut FILE`: for every size what is cut, how, and the cloth it takes. */
export function runCut(file: string, json: boolean, terminal: Terminal): number {
  const { source, pattern } = openPattern(file);
  const worked = workOut(pattern);
  const facts = fitFacts(worked);
  if (json) terminal.say(jsonText({ file, ...cutFacts(worked, facts) }));
  else {
    const title = `${facts.title}, edition ${facts.edition}`;
    const sizes = worked.sizes.map((size) => cutText(size, pattern));
    const parts = [title, ...sizes, findingsText(facts.findings, source), verdict(facts)];
    terminal.say(parts.filter((part) => part !== '').join('\n\n'));
  }
  return facts.fits ? EXIT.fine : EXIT.findings;
}

/** Everything that is cut, as plain data. */
function cutFacts({ sizes }: WorkedOut, { title, edition, fits, findings }: PatternFit): object {
  const cut = sizes.map(({ size, quilt, cloth }) => ({
    id: size.id,
    name: size.name,
    finished: quilt.finished,
    ...cloth,
  }));
  return { title, edition, fits, sizes: cut, findings };
}
