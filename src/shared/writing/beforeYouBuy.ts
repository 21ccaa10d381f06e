import { isSquares } from '../cloth/bundle/squares.ts';
import type { FabricNeed } from '../cloth/cloth.ts';
import { usesTogether } from '../cloth/fabricNeeds.ts';
import { count, given, type TracedSize } from '../measure/traced.ts';
import type { Fabric } from '../pattern/schema.ts';
import type { WorkedSize } from '../workroom/workedOut.ts';
import type { Block, Chart, ChartRow, Section, Words } from './book.ts';
import { type Desk, fabricName } from './desk.ts';
import { skills } from './skills.ts';
import { field, onOneLine, sizeWords } from './words.ts';

/** All a buyer asks before she buys: how large it is, what it takes, what she will do. */
export function beforeYouBuy(desk: Desk): Section {
  const { introduction } = desk.pattern.words;
  const lead: Block[] = paragraphs(introduction).map((text) => ({ kind: 'words', text: [text], tone: 'lead' }));
  return {
    id: 'before-you-buy',
    title: 'Sizes and fabric',
    newPage: true,
    blocks: [
      ...lead,
      { kind: 'chart', chart: sizesChart(desk) },
      { kind: 'chart', chart: fabricChart(desk) },
      { kind: 'heading', text: 'What you will do' },
      { kind: 'list', items: skills(desk) },
    ],
  };
}

/** The paragraphs of the designer's own words. */
export function paragraphs(text: string): readonly string[] {
  return text
    .replace(/[\u2028\u2029]/g, '\n')
    .split(/\n\s*\n/)
    .map(onOneLine)
    .filter((paragraph) => paragraph !== '');
}

function sizesChart(desk: Desk): Chart {
  const rows = desk.sizes.map(
    ({ size, quilt }): ChartRow => ({
      cells: [
        [{ strong: size.name }],
        sizeWords(quilt.finished),
        [field(count(size.across, 'across')), ' × ', field(count(size.down, 'down'))],
        sizeWords(finishedBlock(quilt)),
      ],
    }),
  );
  return {
    id: 'sizes',
    title: 'Finished sizes',
    columns: [
      { title: 'Size', align: 'left', share: 2 },
      { title: 'Quilt', align: 'left', share: 3 },
      { title: 'Blocks', align: 'left', share: 2 },
      { title: 'Block, finished', align: 'left', share: 3 },
    ],
    rows,
  };
}

function finishedBlock({ block }: WorkedSize['quilt']): TracedSize {
  const side = (value: number) => ({ value, unit: 'inch', name: 'finished', how: { kind: 'given' } }) as const;
  return { width: side(block.width), height: side(block.height) };
}

/** Every fabric with its yards in every size, then backing and batting. */
function fabricChart(desk: Desk): Chart {
  const { pattern, sizes } = desk;
  const needed = pattern.fabrics.filter(({ id }) => sizes.some((size) => need(size, id) !== undefined));
  const rows = needed.map(({ id, name, direction, scraps }): ChartRow => {
    const cells = sizes.map((size): Words => {
      const its = need(size, id);
      return its === undefined ? ['–'] : boughtWords(its);
    });
    return {
      swatch: id,
      cells: [[{ strong: name }, ...usesOf(sizes, id), ...printOf(direction), ...scrapsOf(scraps)], ...cells],
    };
  });
  const backing: ChartRow = {
    swatch: pattern.backing.fabric,
    cells: [
      [{ strong: 'Backing' }, `, ${fabricName(pattern, pattern.backing.fabric)}`, ...wideOf(pattern.backing)],
      ...sizes.map(({ cloth }): Words => [field(cloth.backing.yards)]),
    ],
  };
  const batting: ChartRow = {
    cells: [[{ strong: 'Batting' }, ', at least'], ...sizes.map(({ cloth }): Words => sizeWords(cloth.batting))],
  };
  return {
    id: 'fabric',
    title: 'Fabric and batting',
    columns: [
      { title: 'Fabric', align: 'left', share: 4 },
      ...sizes.map(({ size }) => ({ title: size.name, align: 'left' as const, share: 2 })),
    ],
    rows: [...bundleRows(desk), ...rows, backing, batting],
  };
}

/** What a buyer has to ask for when the backing is of wide cloth. */
function wideOf({ wide }: Desk['pattern']['backing']): Words {
  return wide === undefined ? [] : ['; wide cloth, ', field(given(wide, 'usable width of wide cloth')), ' at least'];
}

/** What a buyer has to know before she takes another print. */
function printOf(direction: Fabric['direction']): Words {
  return direction === undefined ? [] : [`; a ${direction} print`];
}

/** How many fabrics a scrappy one is, so many yards in all. */
function scrapsOf(scraps: Fabric['scraps']): Words {
  return scraps === undefined ? [] : ['; ', field(count(scraps.length, 'scraps')), ' fabrics together'];
}

/** "1½ yd", or "3 fat quarters", or both. */
function boughtWords({ yards, sheets }: FabricNeed): Words {
  if (sheets === undefined) return [field(yards)];
  const own: Words = [field(sheets.count), ` ${sheets.count.name ?? sheets.name}`];
  return yards.value > 0 ? [...own, ' and ', field(yards)] : own;
}

/** Bundles of strips to buy, and what is in one. */
function bundleRows({ pattern, sizes }: Desk): readonly ChartRow[] {
  const { bundle } = pattern;
  if (bundle === undefined) return [];
  const { values, strip, length } = bundle;
  const all = count(values.light + values.medium + values.dark, 'strips in a bundle');
  const shares = (['light', 'medium', 'dark'] as const).filter((value) => values[value] > 0);
  const kinds = shares.flatMap(
    (value, i): Words => [i === 0 ? ': ' : ', ', field(count(values[value], value)), ` ${value}`],
  );
  const measure: Words = sizeWords({ width: given(strip, 'wide'), height: given(length, 'long') });
  const cells = sizes.map((size): Words => {
    const many = size.bundle?.bundles ?? null;
    return many === null
      ? ['–']
      : [field(count(many, many === 1 ? 'bundle' : 'bundles')), many === 1 ? ' bundle' : ' bundles'];
  });
  return [
    {
      cells: [
        [
          { strong: 'Bundle' },
          ' of ',
          field(all),
          isSquares(bundle) ? ' squares, ' : ' strips, ',
          ...measure,
          ...kinds,
        ],
        ...cells,
      ],
    },
  ];
}

function need(size: WorkedSize, fabric: string): WorkedSize['cloth']['needs'][number] | undefined {
  return size.cloth.needs.find((one) => one.fabric === fabric);
}

function usesOf(sizes: readonly WorkedSize[], fabric: string): Words {
  const uses = usesTogether(sizes.map((size) => need(size, fabric)));
  return uses.length === 0 ? [] : [`, ${uses.join(', ')}`];
}
