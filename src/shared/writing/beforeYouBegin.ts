import { clothStep } from '../measure/metric.ts';
import { count, given } from '../measure/traced.ts';
import type { House } from '../pattern/schema.ts';
import type { Block, Section, Words } from './book.ts';
import { cautions } from './cautions.ts';
import { type Desk, sizeNames } from './desk.ts';
import { field } from './words.ts';

/** What the pattern takes for granted, its abbreviations, and the usual cautions. */
export function beforeYouBegin(desk: Desk): Section {
  const usual: Block[] = cautions(desk);
  return {
    id: 'before-you-begin',
    title: 'Before you begin',
    newPage: true,
    blocks: [{ kind: 'list', items: assumptions(desk) }, ...abbreviations(desk), ...usual],
  };
}

function assumptions(desk: Desk): readonly Words[] {
  const { house, backing } = desk.pattern;
  const several: Words[] =
    desk.sizes.length < 2
      ? []
      : [['Where a number changes with the size it stands in this order: ', { strong: sizeNames(desk) }, '.']];
  return [
    ...several,
    ['Sew with a seam allowance of ', field(given(house.seam, 'seam')), ' and fabrics right sides together.'],
    [
      'Fabric is planned at ',
      field(given(house.usableWidth, 'usable width')),
      ' of usable width, with ',
      field(given(house.squaring, 'for squaring up')),
      ' of each fabric for squaring up the cut end, rounded up to the next ',
      field(given(clothStep(house), 'rounding', 'yard')),
      ...washWords(house),
    ],
    ...spareWords(house),
    [
      'Backing and batting reach ',
      field(given(backing.beyond, 'beyond each side')),
      ' beyond the quilt top on every side.',
    ],
    [
      'Make one block first and measure it. If it does not come out at the size given, adjust the seam before you cut the rest.',
    ],
    ['A solid arrow shows which way a seam is pressed. Dots are stitches, dashes are cuts.'],
    ['Cutting with a rotary cutter, machine quilting and sewing on a binding are not taught here.'],
  ];
}

/** What is added for what cloth loses when it is washed. */
function washWords({ shrinkage = 0 }: House): Words {
  if (shrinkage === 0) return ['. Nothing is added for shrinking: wash first and measure if you mean to wash.'];
  const lost = field(given(shrinkage, 'lost in the wash', 'count'));
  return ['. It may lose ', lost, ' in a hundred of its length in the wash: wash it before you cut.'];
}

function spareWords({ spares = 0 }: House): readonly Words[] {
  if (spares === 0) return [];
  const many = field(count(spares, 'spare'));
  return [['Of every piece for the blocks ', many, ' more ', spares === 1 ? 'is' : 'are', ' cut than you sew.']];
}

function abbreviations({ sizes }: Desk): readonly Block[] {
  const stripSets = sizes.some(({ cloth }) => cloth.pieces.some(({ subCut }) => subCut !== undefined));
  const nests = sizes.some(({ pressing }) => pressing.nests > 0);
  return [
    { kind: 'heading', text: 'Words used' },
    {
      kind: 'list',
      items: [
        [{ strong: 'WOF' }, ' – width of fabric, from selvage to selvage.'],
        [{ strong: 'Finished' }, ' – as it measures once it is sewn in all round.'],
        [{ strong: 'Unfinished' }, ' – as it measures with its seam allowance still showing.'],
        ...(stripSets ? [[{ strong: 'Sub-cut' }, ' – a piece cut across a sewn strip set.']] : []),
        ...(nests ? [[{ strong: 'Nest' }, ' – seams pressed to opposite sides lock together where they meet.']] : []),
      ],
    },
  ];
}
