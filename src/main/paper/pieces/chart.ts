import type { Chart, ChartRow } from '../../../shared/writing/book.ts';
import { type Desk, setRuns, setWords } from '../desk.ts';
import { type Item, moved } from '../engine/items.ts';
import type { Align } from '../engine/setText.ts';
import { TYPE } from '../type.ts';
import { type Column, columnsOf } from './chartColumns.ts';
import { groupRow } from './chartGroup.ts';
import { bottomOf, type Content, type Holder, movedContent, type Piece } from './piece.ts';
import { indentFor, type SwatchSize, swatchItems, swatchSize } from './swatch.ts';

const PAD = 2.5;
const HEAD_PAD = 4;
const TITLE_GAP = 6;
/** The tone hangs over the columns so that the letters stand on the grid. */
const OVERHANG = 6;
const TONED = 3;
const AFTER = 18;
/** A chart without groups and with no more rows than this is never parted. */
const SHORT = 8;

/** A chart across the full width: its head is repeated on every page it runs over, a row is never parted. */
export function chart(desk: Desk, data: Chart): Piece[] {
  const holder: Holder = { tag: 'Table' };
  const swatch = swatchSize(desk, data);
  const { columns, size } = columnsOf(desk, data, swatch === null ? 0 : indentFor(swatch));
  const head = headRow(desk, columns, holder);
  const pieces: Piece[] = [
    ...titlePiece(desk, data),
    { ...head, before: data.title === undefined ? 12 : 0, keepWithNext: true },
  ];
  let group: Piece | null = null;
  let inGroup = 0;
  const short = data.rows.length <= SHORT && data.rows.every((row) => row.group === undefined);
  data.rows.forEach((row, index) => {
    const again = group === null ? [head] : [head, group];
    if (row.group !== undefined) {
      const span = columns.length;
      const said = groupRow(desk, row, { first: index === 0, goesOn: false, span });
      pieces.push({ ...said, holder, again: [head], keepWithNext: true });
      group = groupRow(desk, row, { first: true, goesOn: true, span });
      inGroup = 0;
      return;
    }
    inGroup += 1;
    const keepWithNext = short ? index < data.rows.length - 1 : keptWithNext(data.rows, index, inGroup);
    pieces.push({
      ...bodyRow(desk, columns, row, { size, toned: inGroup % TONED === 0, swatch }),
      holder,
      again,
      keepWithNext,
    });
  });
  return pieces.map((piece, i) => (i === pieces.length - 1 ? { ...piece, after: AFTER } : piece));
}

/** The first row of a group stays with the second, the last but one with the last: no row stands alone. */
function keptWithNext(rows: readonly ChartRow[], index: number, inGroup: number): boolean {
  const next = rows[index + 1];
  if (next === undefined || next.group !== undefined) return false;
  const afterNext = rows[index + 2];
  return inGroup === 1 || afterNext === undefined || afterNext.group !== undefined;
}

function titlePiece(desk: Desk, data: Chart): Piece[] {
  if (data.title === undefined) return [];
  const box = setRuns(desk, [{ text: data.title, style: TYPE.chartTitle }], desk.sheet.frameWidth);
  return [
    {
      height: box.height + TITLE_GAP,
      before: 18,
      content: [{ tag: 'H3', items: box.items }],
      decor: [],
      keepWithNext: true,
    },
  ];
}

function headRow(desk: Desk, columns: readonly Column[], holder: Holder): Piece {
  const boxes = columns.map((column) =>
    setRuns(desk, [{ text: column.title, style: TYPE.chartHead }], column.width, column.align),
  );
  const base = Math.max(...boxes.map((box) => box.height));
  const cells = boxes.map((box, i): Content => {
    const cell: Content = { tag: 'TH', scope: 'Column', items: box.items };
    return movedContent(cell, columns[i]?.x ?? 0, base - box.height);
  });
  const y = base + HEAD_PAD;
  const rule = {
    kind: 'rule',
    x: 0,
    y,
    toX: desk.sheet.frameWidth,
    toY: y,
    weight: 0.8,
    colour: desk.palette.rule,
  } as const;
  return { height: y + 2, before: 0, content: [{ tag: 'TR', items: [], inside: cells }], decor: [rule], holder };
}

/** How a row is set: the size of its letters, on a tone or not, and how large the swatches of its chart are. */
interface RowManner {
  readonly size: number;
  readonly toned: boolean;
  readonly swatch: SwatchSize | null;
}

function bodyRow(desk: Desk, columns: readonly Column[], row: ChartRow, { size, toned, swatch }: RowManner): Piece {
  const style = { ...TYPE.chart, size, leading: (TYPE.chart.leading * size) / TYPE.chart.size };
  const cells = columns.map((column, i): Content => {
    const indent = i === 0 && swatch !== null ? indentFor(swatch) : 0;
    const box = setWords(desk, row.cells[i] ?? [], style, column.width - indent, column.align satisfies Align);
    return movedContent({ tag: 'TD', items: box.items }, column.x + indent, PAD);
  });
  const marks = swatch === null || row.swatch === undefined ? [] : swatchItems(desk, row.swatch, swatch);
  const high = marks.length > 0 ? (swatch?.height ?? 0) : 0;
  const words = Math.max(bottomOf(cells) - PAD, style.leading);
  const height = Math.max(words, high) + 2 * PAD;
  const lowered = cells.map((cell) => movedContent(cell, 0, Math.max(0, high - words) / 2));
  const centred = (item: Item) => moved(item, 0, PAD + Math.max(0, style.leading - high) / 2);
  const tone = {
    kind: 'fill',
    x: -OVERHANG,
    y: 0,
    width: desk.sheet.frameWidth + 2 * OVERHANG,
    height,
    colour: desk.palette.tone,
  } as const;
  return {
    height,
    before: 0,
    content: [{ tag: 'TR', items: [], inside: lowered }],
    decor: [...(toned ? [tone] : []), ...marks.map(centred)],
  };
}
