import type { PatchLeaf, Sash } from '../../quilt/quilt.ts';
import type { WorkedSize } from '../../workroom/workedOut.ts';
import type { Words } from '../book.ts';
import type { Desk } from '../desk.ts';
import { strong } from '../words.ts';
import { letterOf, lettersOf } from './sashings.ts';

/**
 * How blocks and sashing are sewn into rows (or columns), and those together.
 * @param size one that has sashing; letters are the same in all
 */
export function sashedWords({ pattern }: Desk, size: WorkedSize, columns: boolean): readonly Words[] {
  const [row, rows] = columns ? ['column', 'columns'] : ['row', 'rows'];
  const [inLine, between] = columns ? (['across', 'down'] as const) : (['down', 'across'] as const);
  const outside = pattern.setting.sashing?.outside === true;
  const corner = size.quilt.patches.find(({ use }) => use === 'cornerstone');
  const ends = outside ? ' and one at each end' : '';
  const blocks: Words = [
    `Sew the blocks of each ${row} together with a sashing between them${ends}: `,
    ...lettersOf(size, inLine),
    '. Press towards the sashing.',
  ];
  const first = outside ? ', and begin and end with one' : '';
  if (corner === undefined) {
    const long = [`Sew the ${rows} together with a long sashing between them${first}: `, ...lettersOf(size, between)];
    return [blocks, [...long, '. Press towards the sashing.']];
  }
  const together = `Sew the ${rows} together with a ${row} of sashing between them${first}. Press towards the sashing.`;
  return [blocks, cornerWords(size, corner, between, row as string, outside), [together]];
}

function cornerWords(size: WorkedSize, corner: PatchLeaf, run: Sash['run'], row: string, outside: boolean): Words {
  return [
    `For each ${row} of sashing sew sashings `,
    ...lettersOf(size, run),
    ' and cornerstones ',
    strong(letterOf(size, corner)),
    ` in turn, beginning and ending with a ${outside ? 'cornerstone' : 'sashing'}. Press towards the sashing.`,
  ];
}
