import { quiltLayoutFigure } from '../diagrams/quiltLayoutFigure.ts';
import { quiltRowsFigure } from '../diagrams/quiltRowsFigure.ts';
import { count } from '../measure/traced.ts';
import type { WorkedSize } from '../workroom/workedOut.ts';
import type { Block, Section, Step, Words } from './book.ts';
import { type Desk, namesOf, perSize, shownFigure } from './desk.ts';
import { inSizes, listed, sizeWords } from './words.ts';

/** The layout of every size with its turns, and the rows sewn together. Nothing when every size is a single block. */
export function quiltTop(desk: Desk): Section {
  const several = desk.sizes.filter(({ quilt }) => quilt.blocks.length > 1);
  const layouts = several.map((size): Block => {
    const figure = quiltLayoutFigure(size.quilt, desk.blocks, size.size.name);
    return { kind: 'figures', figures: [{ figure, caption: caption(size) }], sameScale: false };
  });
  const opening: Block = { kind: 'words', tone: 'body', text: [openingWords(several)] };
  return {
    id: 'quilt',
    title: 'Setting the blocks',
    newPage: false,
    blocks: several.length === 0 ? [] : [opening, desk.number([rowStep(desk, several)]), ...layouts],
  };
}

function openingWords(sizes: readonly WorkedSize[]): string {
  const reversed = [...new Set(sizes.flatMap(({ quilt }) => Object.keys(quilt.reversed)))].sort();
  const [first] = reversed;
  const images = listed(reversed.map((letter) => `${letter}r`));
  const mirrored =
    first === undefined ? '' : `; ${images} ${reversed.length === 1 ? 'is' : 'are'} the reversed ${listed(reversed)}`;
  return (
    `The letter names the block${mirrored}. The arrow points to where the block’s top lies. ` +
    'Lay all blocks out before you sew the first two together, and look at them from a distance.'
  );
}

function caption({ size, quilt }: WorkedSize): Words {
  const letters = Object.entries(quilt.counts).sort(([a], [b]) => (a < b ? -1 : 1));
  const blocks = letters.flatMap(([letter, many]) => {
    const reversed = quilt.reversed[letter] ?? 0;
    return [
      ...(many > reversed ? [`${many - reversed} ${letter}`] : []),
      ...(reversed > 0 ? [`${reversed} ${letter}r`] : []),
    ];
  });
  return [{ strong: size.name }, ', ', ...sizeWords(quilt.finished), ' finished: ', listed(blocks), '.'];
}

/** The size with the fewest blocks shows best how rows are sewn; one that has both rows and columns, if there is one. */
function fewestBlocks(sizes: readonly WorkedSize[]): WorkedSize {
  const square = sizes.filter(({ size }) => size.across > 1 && size.down > 1);
  const among = square.length > 0 ? square : sizes;
  return among.reduce((few, size) => (size.quilt.blocks.length < few.quilt.blocks.length ? size : few));
}

function rowStep(desk: Desk, several: readonly WorkedSize[]): Step {
  const shown = fewestBlocks(several);
  return {
    words: [...sewing(several), ...nesting(desk, several), ...single(desk, several)],
    figures: [shownFigure(desk, shown, quiltRowsFigure(shown.quilt, desk.blocks, shown.pressing))],
    perSize: perSize(
      desk,
      'Rows',
      several.map((size) => [size, count(size.size.down, 'rows')]),
    ),
  };
}

function sewing(several: readonly WorkedSize[]): readonly Words[] {
  if (several.every(({ size }) => size.across === 1)) {
    return [['Sew the blocks together one below another. Press the seams as the arrows point.']];
  }
  if (several.every(({ size }) => size.down === 1)) {
    return [['Sew the blocks together side by side. Press the seams as the arrow points.']];
  }
  return [
    [
      'Sew the blocks of each row together. Press the seams of a row all one way and those of the next row the other way, as the arrows point.',
    ],
    ['Sew the rows together. Press the seams as the arrows point.'],
  ];
}

/** Where seams of neighbours nest and where they do not, in every size. */
function nesting(desk: Desk, several: readonly WorkedSize[]): readonly Words[] {
  const meeting = several.filter(({ pressing }) => pressing.nests + pressing.stacks > 0);
  if (meeting.length === 0) return [];
  if (meeting.every(({ pressing }) => pressing.stacks === 0)) return [['Every seam that meets another nests with it.']];
  const named = namesOf(desk, meeting);
  const nests = meeting.map(({ pressing }) => count(pressing.nests, 'nest'));
  const stacks = meeting.map(({ pressing }) => count(pressing.stacks, 'lie to one side'));
  return [
    [
      'Seams that meet nest in ',
      ...inSizes(nests, named),
      ' places and lie to the same side in ',
      ...inSizes(stacks, named),
      '. Where they lie to the same side, press one of them open or the other way before you sew across.',
    ],
  ];
}

function single(desk: Desk, several: readonly WorkedSize[]): readonly Words[] {
  const names = desk.sizes.filter((size) => !several.includes(size)).map(({ size }) => size.name);
  if (names.length === 0) return [];
  return [[`${listed(names)} ${names.length === 1 ? 'is' : 'are'} a single block.`]];
}
