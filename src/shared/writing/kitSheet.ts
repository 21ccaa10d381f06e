import { inksFor } from '../diagrams/hatches.ts';
import { unitsOn } from '../measure/metric.ts';
import { count } from '../measure/traced.ts';
import type { Pattern } from '../pattern/schema.ts';
import { kitIn } from '../workroom/clothWays.ts';
import type { WorkedOut, WorkedSize } from '../workroom/workedOut.ts';
import { editionText } from './backMatter.ts';
import type { Block, Book, Chart, ChartRow, Words } from './book.ts';
import { fabricName } from './desk.ts';
import { inUnits } from './inUnits.ts';
import { field, sizeWords } from './words.ts';

/**
 * The sheet a shop puts kits of one size together by: bolt cuts in the order they are made, what is counted out, what
 * lies in each kit. A short book of its own, for it is not for the buyer of the pattern.
 */
export function writeKitSheet(worked: WorkedOut, size: WorkedSize, kits: number): Book {
  const { pattern, findings } = worked;
  const sheet = kitIn(worked, size, kits);
  const blocks: Block[] = [
    { kind: 'words', text: leadWords(pattern, size), tone: 'lead' },
    { kind: 'chart', chart: boltChart(sheet, pattern) },
    ...(sheet.counted.length === 0 ? [] : [{ kind: 'chart', chart: countedChart(sheet, pattern) } as const]),
    { kind: 'words', text: squaringWords(pattern), tone: 'quiet' },
    { kind: 'heading', text: 'In each kit' },
    { kind: 'list', items: contentsOf(sheet, pattern) },
    {
      kind: 'words',
      text: ['Batting, at least ', ...sizeWords(size.cloth.batting), ', is not in the kit.'],
      tone: 'quiet',
    },
  ];
  const title = `${kits === 1 ? '1 kit' : `${kits} kits`} of ${pattern.title}, ${size.size.name}`;
  return {
    title,
    designer: pattern.words.designer,
    edition: editionText(pattern.edition.number),
    date: pattern.edition.date,
    language: 'en',
    sections: inUnits([{ id: 'kit', title, newPage: true, blocks }], unitsOn(pattern.house.step)),
    inks: inksFor(pattern.fabrics),
    findings,
  };
}

type Sheet = ReturnType<typeof kitIn>;

function leadWords({ edition }: Pattern, { quilt }: WorkedSize): Words {
  return [
    'A quilt of ',
    ...sizeWords(quilt.finished),
    `, cut as ${editionText(edition.number).toLowerCase()} of the pattern asks.`,
  ];
}

function boltChart({ cloth, kits }: Sheet, pattern: Pattern): Chart {
  const cuts = count(kits, 'cuts');
  const rows = cloth.map(
    ({ fabric, uses, each, bolt, wide }, i): ChartRow => ({
      swatch: fabric,
      cells: [
        [field(count(i + 1, 'order')), '  ', { strong: fabricName(pattern, fabric) }, ...wideWords(wide)],
        [uses.join(', ')],
        [field(each)],
        [field(cuts)],
        [field(bolt)],
      ],
    }),
  );
  return {
    id: 'bolt',
    title: 'From the bolt, in this order: the longest first, so that a short bolt is found out early',
    columns: [
      { title: 'Fabric', align: 'left', share: 3.4 },
      { title: 'For', align: 'left', share: 3.2 },
      { title: 'Each cut', align: 'right', share: 1.4 },
      { title: 'Cuts', align: 'right', share: 1 },
      { title: 'Bolt', align: 'right', share: 1.4 },
    ],
    rows,
  };
}

function wideWords(wide: Sheet['cloth'][number]['wide']): Words {
  return wide === undefined ? [] : ['; wide cloth, ', field(wide), ' at least'];
}

function countedChart({ counted }: Sheet, pattern: Pattern): Chart {
  const rows = counted.map(({ fabric, what, each, all }): ChartRow => {
    const name: Words = fabric === null ? [{ strong: 'The bundle' }] : [{ strong: fabricName(pattern, fabric) }];
    return { ...(fabric === null ? {} : { swatch: fabric }), cells: [name, [what], [field(each)], [field(all)]] };
  });
  return {
    id: 'counted',
    title: 'Counted out',
    columns: [
      { title: 'Fabric', align: 'left', share: 3.4 },
      { title: 'What', align: 'left', share: 4.2 },
      { title: 'In each kit', align: 'right', share: 1.4 },
      { title: 'In all', align: 'right', share: 1.4 },
    ],
    rows,
  };
}

function squaringWords({ house }: Pattern): Words {
  if (house.squaring === 0) return ['No cloth for squaring up is counted in.'];
  const { squaring } = house;
  const length = { value: squaring, unit: 'inch', name: 'squaring up', how: { kind: 'given' } } as const;
  return [
    'Square up the end of each bolt once: ',
    field(length),
    ' for it is counted in. Each cut has its own, for the maker squares it up again.',
  ];
}

function contentsOf({ contents }: Sheet, { title, edition }: Pattern): readonly Words[] {
  return [
    ...contents.map(({ amount, what }): Words => [field(amount), ` ${what}`]),
    [`The pattern “${title}”, ${editionText(edition.number).toLowerCase()}`],
  ];
}

/** "harbour-lights-lap-12-kits": what files of it are named by. */
export function kitFileName({ id }: Pick<Pattern, 'id'>, size: string, kits: number): string {
  const plain = size.toLowerCase().replace(/[^a-z0-9]+/g, '-');
  return `${id}-${plain}-${kits}-kits`;
}
