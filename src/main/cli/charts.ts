import type { FabricNeed, PieceLine } from '../../shared/cloth/cloth.ts';
import { fractionOf } from '../../shared/measure/fraction.ts';
import { explain } from '../../shared/measure/traced.ts';
import type { Pattern } from '../../shared/pattern/schema.ts';
import type { WorkedOut, WorkedSize } from '../../shared/workroom/workedOut.ts';
import { csvText } from '../../shared/writing/csv.ts';
import { afterCutText, cutSizeText, usedFor } from './pieceWords.ts';

type Cells = readonly (string | number)[];
type RowsOf = (size: WorkedSize, nameOf: (fabric: string) => string) => readonly Cells[];

/** One chart of all sizes: the ending of its file's name, its columns after the size, its rows. */
interface ChartFile {
  readonly ending: string;
  readonly head: readonly string[];
  readonly rowsOf: RowsOf;
}

const CHARTS: readonly ChartFile[] = [
  {
    ending: 'cutting',
    head: ['Fabric', 'Letter', 'Cut', 'Width, inches', 'Height, inches', 'Size to cut', 'Then', 'Spare', 'For'],
    rowsOf: ({ cloth }, nameOf) => cloth.pieces.map((line) => pieceCells(line, nameOf(line.fabric))),
  },
  {
    ending: 'strips',
    head: ['Fabric', 'Strips', 'Strip, inches', 'Strip', 'Letter', 'In each strip', 'Width, inches', 'Height, inches'],
    rowsOf: ({ cloth }, nameOf) => cloth.needs.flatMap((need) => stripCells(need, nameOf(need.fabric))),
  },
  {
    ending: 'fabric',
    head: ['Fabric', 'For', 'Yards', 'Yards to buy', 'Strips', 'Length, inches', 'Proven least, inches', 'Sum'],
    rowsOf: ({ cloth }, nameOf) => [
      ...cloth.needs.map((need) => needCells(need, nameOf(need.fabric))),
      backingCells(cloth, nameOf(cloth.backing.fabric)),
      [
        '',
        `batting, at least ${fractionOf(cloth.batting.width.value)} × ${fractionOf(cloth.batting.height.value)} inches`,
      ],
    ],
  },
];

/** The charts of a pattern as CSV texts, by the ending of the file's name. Every row is as long as the head. */
export function chartFiles({ pattern, sizes }: WorkedOut): ReadonlyMap<string, string> {
  const nameOf = namesIn(pattern);
  return new Map(
    CHARTS.map(({ ending, head, rowsOf }) => {
      const rows = sizes.flatMap((size) =>
        rowsOf(size, nameOf).map((cells) => [size.size.name, ...filled(cells, head.length)]),
      );
      return [`${ending}.csv`, csvText(['Size', ...head], rows)];
    }),
  );
}

function namesIn({ fabrics }: Pattern): (fabric: string) => string {
  const names = new Map(fabrics.map(({ id, name }) => [id, name]));
  return (fabric) => names.get(fabric) ?? fabric;
}

function filled(cells: Cells, length: number): Cells {
  return [...cells, ...Array<string>(length - cells.length).fill('')];
}

function pieceCells(line: PieceLine, fabric: string): Cells {
  const { letter, count, width, height, spare } = line;
  const then = afterCutText(line);
  return [fabric, letter, count.value, width.value, height.value, cutSizeText(line), then, spare, usedFor(line)];
}

function stripCells({ plan }: FabricNeed, fabric: string): readonly Cells[] {
  return plan.strips.flatMap(({ times, height, pieces }) =>
    pieces.map((piece): Cells => {
      const strip = [fabric, times, height, `${fractionOf(height)} inches`];
      return [...strip, piece.letter, piece.count, piece.width, piece.height];
    }),
  );
}

function needCells({ uses, plan, yards, sheets }: FabricNeed, fabric: string): Cells {
  const byYard = sheets === undefined || yards.value > 0 ? [`${fractionOf(yards.value)} yd`] : [];
  const inSheets = sheets === undefined ? [] : [`${sheets.count.value} ${sheets.count.name ?? ''}`];
  const bought = [fabric, uses.join(', '), yards.value, [...inSheets, ...byYard].join(' and ')];
  return [...bought, plan.stripCount, plan.length.value, plan.bound, explain(yards)];
}

function backingCells({ backing }: WorkedSize['cloth'], fabric: string): Cells {
  const { yards } = backing;
  return [fabric, 'backing', yards.value, `${fractionOf(yards.value)} yd`, '', '', '', explain(yards)];
}
