import type { Figure } from '../../../shared/diagrams/figure.ts';
import type { ChartRow } from '../../../shared/writing/book.ts';
import { type Desk, setRuns } from '../desk.ts';
import { drawnFigure } from '../drawnFigure.ts';
import type { FigureItem } from '../engine/items.ts';
import { LABELS } from '../labels.ts';
import { TYPE } from '../type.ts';
import { runsOf } from '../words.ts';
import { type Content, movedContent, type Piece } from './piece.ts';

/** A swatch in points: the pen draws it a point to the inch. */
const SWATCH = { width: 14, height: 11 };
const INDENT = 21;
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
  const swatch = row.group?.fabric === undefined ? null : swatchOf(desk, row.group.fabric);
  const indent = swatch === null ? 0 : INDENT;
  const named = row.cells.filter((cell) => cell.length > 0);
  const runs = named.flatMap((cell, i) => [
    ...(i === 0 ? [] : [{ text: '   ', style: TYPE.chart }]),
    ...runsOf(cell, i === 0 ? TYPE.chartGroup : TYPE.chart),
  ]);
  const more = goesOn ? [{ text: `  ${LABELS.continued}`, style: { ...TYPE.caption } }] : [];
  const box = setRuns(desk, [...runs, ...more], desk.sheet.frameWidth - indent);
  const y = first ? 5 : ABOVE;
  const words = movedContent({ tag: 'TH', scope: 'Row', span, items: box.items }, indent, y);
  const mark = swatch === null ? [] : [{ ...swatch, y: y + (TYPE.chartGroup.leading - swatch.height) / 2 }];
  const line: Content = { tag: 'TR', items: [], inside: [words] };
  return { height: y + box.height + BELOW, before: 0, content: [line], decor: mark };
}

function swatchOf(desk: Desk, fabric: string): FigureItem | null {
  if (!desk.book.inks.some((ink) => ink.fabric === fabric)) return null;
  const { width, height } = SWATCH;
  const corners = [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: height },
    { x: 0, y: height },
  ];
  const figure: Figure = {
    width,
    height,
    alt: '',
    marks: [{ kind: 'area', outlines: [corners], fabric, tone: 'full', edge: 'patch' }],
  };
  return drawnFigure(desk, figure, 1);
}
