import { usesTogether } from '../cloth/fabricNeeds.ts';
import { count, type TracedSize } from '../measure/traced.ts';
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
export function fabricChart(desk: Desk): Chart {
  const { pattern, sizes } = desk;
  const needed = pattern.fabrics.filter(({ id }) => sizes.some((size) => need(size, id) !== undefined));
  const rows = needed.map(({ id, name }): ChartRow => {
    const cells = sizes.map((size): Words => {
      const its = need(size, id);
      return its === undefined ? ['–'] : [field(its.yards)];
    });
    return { swatch: id, cells: [[{ strong: name }, ...usesOf(sizes, id)], ...cells] };
  });
  const backing: ChartRow = {
    swatch: pattern.backing.fabric,
    cells: [
      [{ strong: 'Backing' }, `, ${fabricName(pattern, pattern.backing.fabric)}`],
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
    rows: [...rows, backing, batting],
  };
}

function need(size: WorkedSize, fabric: string): WorkedSize['cloth']['needs'][number] | undefined {
  return size.cloth.needs.find((one) => one.fabric === fabric);
}

function usesOf(sizes: readonly WorkedSize[], fabric: string): Words {
  const uses = usesTogether(sizes.map((size) => need(size, fabric)));
  return uses.length === 0 ? [] : [`, ${uses.join(', ')}`];
}
