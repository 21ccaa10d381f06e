import { quiltLayoutFigure } from '../diagrams/quiltLayoutFigure.ts';
import { quiltRowsFigure } from '../diagrams/quiltRowsFigure.ts';
import { count } from '../measure/traced.ts';
import type { WorkedSize } from '../workroom/workedOut.ts';
import type { Block, Section, Step, Words } from './book.ts';
import type { Desk } from './desk.ts';
import { field, listed, sizeWords } from './words.ts';

/** The layout of every size with its turns, and the rows sewn together. */
export function quiltTop(desk: Desk): Section {
  const layouts = desk.sizes.flatMap((size): Block[] => [
    { kind: 'figures', figures: [{ figure: layout(desk, size), caption: caption(size) }], sameScale: false },
  ]);
  return {
    id: 'quilt',
    title: 'Setting the blocks',
    newPage: false,
    blocks: [
      {
        kind: 'words',
        tone: 'body',
        text: [
          'The letter names the block, the arrow points to where its top lies. ',
          'Lay all blocks out before you sew the first two together, and look at them from a distance.',
        ],
      },
      desk.number(rowSteps(desk)),
      ...layouts,
    ],
  };
}

function layout(desk: Desk, { quilt, size }: WorkedSize) {
  return quiltLayoutFigure(quilt, desk.blocks, size.name);
}

function caption({ size, quilt }: WorkedSize): Words {
  const blocks = Object.entries(quilt.counts).map(([letter, many]) => `${many} ${letter}`);
  return [{ strong: size.name }, ', ', ...sizeWords(quilt.finished), ' finished: ', listed(blocks), '.'];
}

/** The size with the fewest blocks shows best how rows are sewn. */
function fewestBlocks({ sizes, shown }: Desk): WorkedSize {
  return sizes.reduce((few, size) => (size.quilt.blocks.length < few.quilt.blocks.length ? size : few), shown);
}

function rowSteps(desk: Desk): readonly Step[] {
  const shown = fewestBlocks(desk);
  const rows: Step = {
    words: [
      [
        'Sew the blocks of each row together. Press the seams of a row all one way and those of the next row the other way, as the arrows point.',
      ],
      ['Sew the rows together. ', ...nesting(shown, desk.sizes.length > 1)],
    ],
    figures: [{ figure: quiltRowsFigure(shown.quilt, desk.blocks, shown.pressing), caption: [shown.size.name] }],
    perSize: {
      label: 'Rows',
      values: desk.sizes.map(({ size }) => ({ size: size.name, value: count(size.down, 'rows') })),
    },
  };
  return [rows];
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
