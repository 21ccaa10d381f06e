import { count, given, named, plus, rounded, type Traced, times } from '../../measure/traced.ts';
import type { StripsSetting } from '../../pattern/schema.ts';
import type { BlockLeaf, PatchLeaf } from '../../quilt/quilt.ts';
import type { WorkedSize } from '../../workroom/workedOut.ts';
import type { Words } from '../book.ts';
import { type Desk, namesOf } from '../desk.ts';
import { inSizes, listed, strong } from '../words.ts';
import { letterOf, lettersOf, sashKinds } from './sashings.ts';

/** How strips of blocks are sewn, shifted or not, and sewn together with or without sashing. */
export function stripWords(desk: Desk, several: readonly WorkedSize[], setting: StripsSetting): readonly Words[] {
  const [row, rows] = setting.run === 'rows' ? ['row', 'rows'] : ['column', 'columns'];
  return [
    ...endWords(desk, several, setting, rows as string),
    [
      `Sew the blocks of each ${row} together. Press the seams of a ${row} all one way and those of the next ${row} the other way, as the arrows point.`,
    ],
    togetherWords(several, setting, row as string, rows as string),
  ];
}

/** What shifted strips have at their ends. */
function endWords(desk: Desk, sizes: readonly WorkedSize[], setting: StripsSetting, rows: string): readonly Words[] {
  if (setting.shift === undefined) return [];
  const shifted = `${rows === 'rows' ? 'Rows' : 'Columns'} that are shifted begin and end with `;
  if (setting.fill !== undefined) return [[shifted, ...fillerWords(sizes), ', as the figure shows.']];
  return [
    [
      shifted,
      'a block that is cut off: make the blocks whole and cut them, leaving on the ruler ',
      ...partWords(desk, sizes),
      ' of each, seams counted in. ',
      'Of a block that begins a strip keep the end, of one that ends it the beginning. A second part from the same block would lack its seams.',
    ],
  ];
}

function fillerWords(sizes: readonly WorkedSize[]): Words {
  const [shown] = sizes;
  const fillers = new Map<string, PatchLeaf>();
  for (const patch of shown?.quilt.patches ?? []) if (patch.use === 'filler') fillers.set(patch.name, patch);
  const letters = [...fillers.values()].map((patch) => letterOf(shown as WorkedSize, patch));
  return ['a plain piece ', strong(listed(letters))];
}

/** The cut lengths of what is kept, the shorter first, in every size. */
function partWords(desk: Desk, sizes: readonly WorkedSize[]): Words {
  const { house } = desk.pattern;
  const shares = [...new Set(sizes.flatMap(({ quilt }) => quilt.blocks.flatMap(shareOf)))].sort((a, b) => a - b);
  const cut = (size: WorkedSize, share: number): Traced => {
    const { width, height } = size.quilt.block;
    const along = size.quilt.blocks.find(({ part }) => part !== undefined)?.part?.along;
    const whole = given(along === 'down' ? height : width, 'finished');
    const seams = named(times(count(2, ''), given(house.seam, 'seam')), 'for two seams');
    return rounded(plus(times(count(share, 'of'), whole), seams), house.step, 'near');
  };
  return shares.flatMap((share, i) => [
    i === 0 ? '' : ' or ',
    ...inSizes(
      sizes.map((size) => cut(size, share)),
      namesOf(desk, sizes),
    ),
  ]);
}

function shareOf({ part }: BlockLeaf): readonly number[] {
  return part === undefined ? [] : [Number((part.to - part.from).toFixed(6))];
}

function togetherWords(several: readonly WorkedSize[], setting: StripsSetting, row: string, rows: string): Words {
  const sashed = several.find((size) => sashKinds(size).length > 0);
  if (sashed === undefined) return [`Sew the ${rows} together. Press the seams as the arrows point.`];
  const ends = setting.sashing?.outside === true ? ', and begin and end with one' : '';
  return [
    `Sew the ${rows} together with a long sashing beside each ${row}${ends}: `,
    ...lettersOf(sashed, setting.run === 'rows' ? 'across' : 'down'),
    '. Press towards the sashing.',
  ];
}
