import { quiltLayoutFigure } from '../diagrams/quiltLayoutFigure.ts';
import type { WorkedSize } from '../workroom/workedOut.ts';
import type { Block, Section, Words } from './book.ts';
import type { Desk } from './desk.ts';
import { rowSteps } from './setting/rowSteps.ts';
import { sashingSteps } from './setting/sashingStep.ts';
import { listed, sizeWords } from './words.ts';

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
      desk.number([...sashingSteps(desk), ...rowSteps(desk)]),
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
