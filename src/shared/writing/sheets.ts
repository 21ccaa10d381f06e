import type { SheetCut, SheetNeed, Strip } from '../cloth/cloth.ts';
import { count, given } from '../measure/traced.ts';
import type { Block, Words } from './book.ts';
import { type Desk, fabricName } from './desk.ts';
import { field } from './words.ts';

/** How sheets are cut, fabric by fabric and size by size: sheets cut alike in one line. Nothing where none are bought. */
export function sheetBlocks({ pattern, sizes }: Desk): readonly Block[] {
  const all = sizes.flatMap(({ size, cloth }) =>
    cloth.needs.flatMap(({ fabric, sheets }) => (sheets === undefined ? [] : [{ size: size.name, fabric, sheets }])),
  );
  if (all.length === 0) return [];
  const words: Words = [
    'Cut each sheet into strips first, all the way across the side that is named, then the pieces from the strips. ',
    'A piece with a star is lower than its strip: trim it.',
  ];
  return [
    { kind: 'heading', text: 'Sheet by sheet' },
    { kind: 'words', tone: 'body', text: words },
    ...all.flatMap(({ size, fabric, sheets }): Block[] => [
      { kind: 'words', tone: 'body', text: headWords(fabricName(pattern, fabric), size, sheets, sizes.length) },
      { kind: 'list', items: sheets.plans.map((plan) => sheetWords(plan, sheets)) },
    ]),
  ];
}

function headWords(fabric: string, size: string, { count: many, width, height }: SheetNeed, sizes: number): Words {
  const measure: Words = [field(given(width, 'wide')), ' × ', field(given(height, 'high'))];
  const of = sizes === 1 ? fabric : `${fabric}, ${size}`;
  return [{ strong: of }, ': ', field(many), ` ${many.name}, `, ...measure];
}

/** "From each of 2, strips across 18″: 3 × 4½″: 12 B, 2 C*". */
function sheetWords({ times, lengthwise, strips }: SheetCut, { width, height }: SheetNeed): Words {
  const many: Words = times === 1 ? ['From one'] : ['From each of ', field(count(times, 'sheets'))];
  const across: Words = [', strips across the ', field(given(lengthwise ? height : width, 'side')), ' side: '];
  return [
    ...many,
    ...across,
    ...strips.flatMap((strip, i): Words => [...(i === 0 ? [] : ['; ']), ...stripWords(strip)]),
  ];
}

function stripWords({ times, height, pieces }: Strip): Words {
  const own = pieces.flatMap((piece, i): Words => {
    const low = piece.height < height - 1e-5 ? '*' : '';
    return [i === 0 ? '' : ', ', field(count(piece.count * times, piece.letter)), ` ${piece.letter}${low}`];
  });
  return [field(count(times, 'strips')), ' × ', field(given(height, 'height')), ': ', ...own];
}
