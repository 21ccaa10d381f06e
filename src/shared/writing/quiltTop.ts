import { quiltLayoutFigure } from '../diagrams/quiltLayoutFigure.ts';
import type { WorkedSize } from '../workroom/workedOut.ts';
import type { Block, Section, Step, Words } from './book.ts';
import type { Desk } from './desk.ts';
import { onPointSteps } from './setting/onPointSteps.ts';
import { rowStep } from './setting/rowStep.ts';
import { sashingSteps } from './setting/sashingStep.ts';
import { listed, sizeWords } from './words.ts';

/** The layout of every size with its turns, and the rows sewn together. Nothing when every size is a single block. */
export function quiltTop(desk: Desk): Section {
  const several = desk.sizes.filter(({ quilt }) => quilt.blocks.length > 1 || quilt.triangles.length > 0);
  const layouts = several.map((size): Block => {
    const figure = quiltLayoutFigure(size.quilt, desk.blocks, size.size.name, desk.units);
    return { kind: 'figures', figures: [{ figure, caption: caption(size) }], sameScale: false };
  });
  const opening: Block = { kind: 'words', tone: 'body', text: [openingWords(several)] };
  return {
    id: 'quilt',
    title: 'Setting the blocks',
    newPage: false,
    blocks: several.length === 0 ? [] : [opening, desk.number(steps(desk, several)), ...layouts],
  };
}

function steps(desk: Desk, several: readonly WorkedSize[]): readonly Step[] {
  const sewing = desk.pattern.setting.kind === 'on-point' ? onPointSteps(desk) : [rowStep(desk, several)];
  return [...sashingSteps(desk), ...sewing];
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
