import type { ChartRow } from '../../../shared/writing/book.ts';
import { type Desk, setRuns } from '../desk.ts';
import { moved } from '../engine/items.ts';
import { LABELS } from '../labels.ts';
import { TYPE } from '../type.ts';
import { runsOf } from '../words.ts';
import { type Content, movedContent, type Piece } from './piece.ts';
import { indentFor, SMALL, swatchItems } from './swatch.ts';

const ABOVE = 8;
const BELOW = 3;

/** Where a group stands in its chart. */
interface GroupPlace {
  /** Right under the head. */
  readonly first: boolean;
  /** Said again at the top of a page. */
  readonly goesOn: boolean;
  /** Columns of the chart. */
  readonly span: number;
}

/** A row that names the fabric below it, with a swatch of its colour and hatch; said again when a page breaks it. */
export function groupRow(desk: Desk, row: ChartRow, { first, goesOn, span }: GroupPlace): Piece {
  const swatch = row.group?.fabric === undefined ? [] : swatchItems(desk, row.group.fabric, SMALL);
  const indent = swatch.length === 0 ? 0 : indentFor(SMALL);
  const named = row.cells.filter((cell) => cell.length > 0);
  const runs = named.flatMap((cell, i) => [
    ...(i === 0 ? [] : [{ text: '   ', style: TYPE.chart }]),
    ...runsOf(cell, i === 0 ? TYPE.chartGroup : TYPE.chart),
  ]);
  const more = goesOn ? [{ text: `  ${LABELS.continued}`, style: { ...TYPE.caption } }] : [];
  const box = setRuns(desk, [...runs, ...more], desk.sheet.frameWidth - indent);
  const y = first ? 5 : ABOVE;
  const words = movedContent({ tag: 'TH', scope: 'Row', span, items: box.items }, indent, y);
  const mark = swatch.map((item) => moved(item, 0, y + (TYPE.chartGroup.leading - SMALL.height) / 2));
  const line: Content = { tag: 'TR', items: [], inside: [words] };
  return { height: y + box.height + BELOW, before: 0, content: [line], decor: mark };
}
