import { quiltRowsFigure } from '../../diagrams/quiltRowsFigure.ts';
import { count } from '../../measure/traced.ts';
import type { PatchLeaf } from '../../quilt/quilt.ts';
import type { WorkedSize } from '../../workroom/workedOut.ts';
import type { Step, Words } from '../book.ts';
import type { Desk } from '../desk.ts';
import { field, listed, strong } from '../words.ts';
import { letterOf, sashKinds } from './sashings.ts';

/** How blocks, with or without sashing, are sewn into rows or columns and those together. */
export function rowSteps(desk: Desk): readonly Step[] {
  const shown = clearest(desk, desk.shown);
  const { setting } = desk.pattern;
  const columns = setting.sewn === 'columns';
  const sashed = desk.sizes.find((size) => sashKinds(size).length > 0);
  const lines = sashed === undefined ? plainLines(desk, shown, columns) : sashedLines(desk, sashed, shown, columns);
  return [
    {
      words: [...lines, ...withoutSashing(desk, sashed !== undefined)],
      figures: [{ figure: quiltRowsFigure(shown.quilt, desk.blocks, shown.pressing), caption: [shown.size.name] }],
      perSize: {
        label: columns ? 'Columns' : 'Rows',
        values: desk.sizes.map(({ size }) => {
          const value = columns ? count(size.across, 'columns') : count(size.down, 'rows');
          return { size: size.name, value };
        }),
      },
    },
  ];
}

/** The size with the fewest blocks shows best how rows are sewn, as long as it has rows, and sashing if others have. */
function clearest({ sizes }: Desk, shown: WorkedSize): WorkedSize {
  const sashed = sizes.filter((size) => sashKinds(size).length > 0);
  const kin = (sashed.length > 0 ? sashed : sizes).filter(({ size }) => size.across > 1 && size.down > 1);
  return kin.reduce((few, size) => (size.quilt.blocks.length < few.quilt.blocks.length ? size : few), kin[0] ?? shown);
}

function plainLines(desk: Desk, shown: WorkedSize, columns: boolean): readonly Words[] {
  const [row, rows] = columns ? ['column', 'columns'] : ['row', 'rows'];
  return [
    [
      `Sew the blocks of each ${row} together. Press the seams of a ${row} all one way and those of the next ${row} the other way, as the arrows point.`,
    ],
    [`Sew the ${rows} together. `, ...nesting(shown, desk.sizes.length > 1)],
  ];
}

function sashedLines(desk: Desk, sashed: WorkedSize, shown: WorkedSize, columns: boolean): readonly Words[] {
  const [row, rows] = columns ? ['column', 'columns'] : ['row', 'rows'];
  const outside = desk.pattern.setting.sashing?.outside === true;
  const [inLine, between] = columns ? (['across', 'down'] as const) : (['down', 'across'] as const);
  const corner = sashed.quilt.patches.find(({ use }) => use === 'cornerstone');
  const ends = outside ? ` and one at each end` : '';
  const lines: Words[] = [
    [
      `Sew the blocks of each ${row} together with a sashing between them${ends}: `,
      ...lettersOf(sashed, inLine),
      '. Press towards the sashing.',
    ],
  ];
  if (corner !== undefined) lines.push(cornerLine(sashed, corner, between, row as string, outside));
  const line = corner === undefined ? 'a long sashing' : `a ${row} of sashing`;
  const first = outside ? `, and begin and end with one` : '';
  lines.push([
    `Sew the ${rows} together with ${line} between them${first}`,
    ...(corner === undefined ? [': ', ...lettersOf(sashed, between)] : []),
    '. Press towards the sashing. ',
    ...nesting(shown, desk.sizes.length > 1),
  ]);
  return lines;
}

function cornerLine(size: WorkedSize, corner: PatchLeaf, run: 'down' | 'across', row: string, outside: boolean): Words {
  return [
    `For each ${row} of sashing sew sashings `,
    ...lettersOf(size, run),
    ' and cornerstones ',
    strong(letterOf(size, corner)),
    ` in turn, ${outside ? 'beginning and ending with a cornerstone' : 'beginning and ending with a sashing'}. Press towards the sashing.`,
  ];
}

/** The letters of the strips of a sashing, in order. */
function lettersOf(size: WorkedSize, run: 'down' | 'across'): Words {
  const kind = sashKinds(size).find((one) => one.run === run);
  return (kind?.strips ?? []).flatMap((strip, i) => [i === 0 ? '' : ', ', strong(letterOf(size, strip))]);
}

function withoutSashing({ sizes }: Desk, sashed: boolean): readonly Words[] {
  const without = sizes.filter((size) => sashKinds(size).length === 0).map(({ size }) => size.name);
  if (!sashed || without.length === 0) return [];
  return [[`${listed(without)} has no sashing: sew the blocks to one another.`]];
}

/** Where seams of neighbours nest and where they do not, in the size shown. */
function nesting({ pressing, size }: WorkedSize, several: boolean): Words {
  const { nests, stacks } = pressing;
  if (nests + stacks === 0) return [];
  const inSize = several ? ` in ${size.name}` : '';
  if (stacks === 0) return [`Every seam that meets another nests with it${inSize}.`];
  return [
    `Of the places where seams meet${inSize}, `,
    field(count(nests, 'nest')),
    ' nest; at the other ',
    field(count(stacks, 'lie to one side')),
    ' both lie to one side: press one of them open or the other way before you sew across.',
  ];
}
