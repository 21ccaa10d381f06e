import { quiltRowsFigure } from '../../diagrams/quiltRowsFigure.ts';
import { count } from '../../measure/traced.ts';
import type { WorkedSize } from '../../workroom/workedOut.ts';
import type { Step, Words } from '../book.ts';
import { type Desk, perSize, shownFigure } from '../desk.ts';
import { listed, strong } from '../words.ts';
import { nestingWords } from './nesting.ts';
import { cutWords, edgeWords, letterIn } from './onPointEdges.ts';
import { letterOf, lettersOf, sashKinds } from './sashings.ts';

/** How a setting on point is cut, sewn in diagonal rows, finished with its corners and trimmed. */
export function onPointSteps(desk: Desk): readonly Step[] {
  const shown = desk.sizes.reduce((few, size) => (clearer(size, few) ? size : few), desk.sizes[0] as WorkedSize);
  const figure = shownFigure(desk, shown, quiltRowsFigure(shown.quilt, desk.blocks, shown.pressing, desk.units));
  return [
    { words: cutWords(desk), figures: [] },
    {
      words: [...rowWords(desk, shown), ...nestingWords(desk, desk.sizes), ...withoutSashing(desk)],
      figures: [figure],
      perSize: perSize(
        desk,
        'Diagonal rows',
        desk.sizes.map((size) => [size, count(size.size.across + size.size.down - 1, 'rows')]),
      ),
    },
    { words: edgeWords(desk), figures: [] },
  ];
}

/** Sashing shows where others have it; fewer blocks show more clearly how rows are sewn, if there are rows of several. */
function clearer(a: WorkedSize, b: WorkedSize): boolean {
  const sashed = (size: WorkedSize) => sashKinds(size).length > 0;
  if (sashed(a) !== sashed(b)) return sashed(a);
  const several = ({ size }: WorkedSize) => Math.min(size.across, size.down) > 1;
  if (several(a) !== several(b)) return several(a);
  return a.quilt.blocks.length < b.quilt.blocks.length;
}

function rowWords(desk: Desk, shown: WorkedSize): readonly Words[] {
  const side = letterIn(desk, 'Side triangles');
  const ends: Words =
    side === null
      ? []
      : [
          ' At each end that is not a corner of the quilt sew on a triangle ',
          strong(side),
          ', square corner to square corner; its point reaches beyond.',
        ];
  if (sashKinds(shown).length > 0) return sashedWords(desk, shown, ends);
  return [
    [
      'Sew the blocks of each diagonal row together. Press the seams of a row all one way and those of the next row the other way, as the arrows point.',
      ...ends,
    ],
    ['Sew the rows together. Press the seams as the arrows point.'],
  ];
}

function sashedWords(desk: Desk, shown: WorkedSize, ends: Words): readonly Words[] {
  const within: Words = [
    'Sew the blocks of each diagonal row together with a sashing between them and one at each end: ',
    ...lettersOf(shown, 'down'),
    '. Press towards the sashing.',
    ...ends,
  ];
  const corner = shown.quilt.patches.find(({ words }) => words === 'Cornerstones');
  const edge = letterIn(desk, 'Cornerstones at the edge');
  if (corner === undefined && edge === null) return [within, throughWords(desk, shown)];
  const between: Words = [
    'For each row of sashing sew sashings ',
    ...lettersOf(shown, 'across'),
    ...(corner === undefined ? [] : [' and cornerstones ', strong(letterOf(shown, corner))]),
    ' in turn, with a cornerstone ',
    strong(edge ?? ''),
    ' at both ends. Press towards the sashing.',
  ];
  return [
    within,
    between,
    [
      'Sew the rows together with a row of sashing between them, and begin and end with one. Press towards the sashing.',
    ],
  ];
}

function throughWords(desk: Desk, shown: WorkedSize): Words {
  const through = shown.quilt.patches.filter(({ sash }) => sash?.reach === 'whole');
  const letters = through.flatMap((strip, i): Words => {
    const before = i === 0 ? '' : strip.sash?.strip === 0 ? '; ' : ', ';
    return [before, strong(letterOf(shown, strip))];
  });
  return [
    `Sew a long sashing before the first row, between every two rows, and after the last${desk.sizes.length > 1 ? `; in ${shown.size.name} in this order` : ', in this order'}: `,
    ...letters,
    '. Let both ends reach beyond, the same on both sides. Press towards the sashing.',
  ];
}

function withoutSashing({ sizes }: Desk): readonly Words[] {
  const without = sizes.filter((size) => sashKinds(size).length === 0).map(({ size }) => size.name);
  if (without.length === 0 || without.length === sizes.length) return [];
  return [[`${listed(without)} ${without.length === 1 ? 'has' : 'have'} no sashing: sew the blocks to one another.`]];
}
