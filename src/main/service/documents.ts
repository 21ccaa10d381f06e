import type { Reading } from '../../shared/pattern/load.ts';
import { Refused } from '../refusal.ts';

/** A document that was asked for and is not kept. */
export function gone(what: string, id: string): Refused {
  return new Refused('not-found', `There is no ${what} “${id}” here any more.`);
}

/** A file the designer chose, or a refusal that names the file and every place that is not as it should be. */
export function accepted<T>(read: Reading<T>, name: string): T {
  if (read.ok) return read.value;
  const [first] = read.findings;
  const mend = first?.mend === undefined ? '' : ` ${first.mend}`;
  throw new Refused(read.newer ? 'newer-file' : 'bad-input', `${name}: ${first?.what ?? ''}${mend}`, read.findings);
}

/** A document from the library, which only takes what is sound. */
export function sound<T>(read: Reading<T>): T {
  if (read.ok) return read.value;
  const words = `The library holds a document that cannot be read. ${read.findings[0]?.what ?? ''}`;
  throw new Refused(read.newer ? 'newer-file' : 'broken', words, read.findings);
}
