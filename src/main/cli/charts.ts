import type { FabricNeed, PieceLine } from '../../shared/cloth/cloth.ts';
import { fractionOf, yardsText } from '../../shared/measure/fraction.ts';
import { CENTIMETRE, centimetresOf, METRE, type Units, unitsOn } from '../../shared/measure/metric.ts';
import { explain, tracedText } from '../../shared/measure/traced.ts';
import type { Pattern } from '../../shared/pattern/schema.ts';
import type { WorkedOut, WorkedSize } from '../../shared/workroom/workedOut.ts';
import { csvText } from '../../shared/writing/csv.ts';
import { afterCutText, cutSizeText, usedFor } from './pieceWords.ts';

type Cells = readonly (string | number)[];
type RowsOf = (size: WorkedSize, nameOf: (fabric: string) => string, said: Said) => readonly Cells[];

/** How a chart says lengths: numbers in the columns, and texts. */
interface Said {
  readonly units: Units;
  readonly length: (inches: number) => number;
  readonly cloth: (yards: number) => number;
}

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
    rowsOf: ({ cloth }, nameOf, said) => cloth.pieces.map((line) => pieceCells(line, nameOf(line.fabric), said)),
  },
  {
    ending: 'strips',
    head: ['Fabric', 'Strips', 'Strip, inches', 'Strip', 'Letter', 'In each strip', 'Width, inches', 'Height, inches'],
    rowsOf: ({ cloth }, nameOf, said) => cloth.needs.flatMap((need) => stripCells(need, nameOf(need.fabric), said)),
  },
  {
    ending: 'fabric',
    head: ['Fabric', 'For', 'Yards', 'Yards to buy', 'Strips', 'Length, inches', 'Proven least, inches', 'Sum'],
    rowsOf: ({ cloth }, nameOf, said) => [
      ...cloth.needs.map((need) => needCells(need, nameOf(need.fabric), said)),
      backingCells(cloth, nameOf(cloth.backing.fabric), said),
      ['', `batting, at least ${battingText(cloth, said)}`],
    ],
  },
];

/** The charts of a pattern as CSV texts, by the ending of the file's name. Every row is as long as the head. */
export function chartFiles({ pattern, sizes }: WorkedOut): ReadonlyMap<string, string> {
  const nameOf = namesIn(pattern);
  const said = SAID[unitsOn(pattern.house.step)];
  return new Map(
    CHARTS.map(({ ending, head: inInches, rowsOf }) => {
      const head = inInches.map((title) => titleIn(title, said.units));
      const rows = sizes.flatMap((size) =>
        rowsOf(size, nameOf, said).map((cells) => [size.size.name, ...filled(cells, head.length)]),
      );
      return [`${ending}.csv`, csvText(['Size', ...head], rows)];
    }),
  );
}

const SAID: Readonly<Record<Units, Said>> = {
  inches: { units: 'inches', length: (inches) => inches, cloth: (yards) => yards },
  centimetres: {
    units: 'centimetres',
    length: (inches) => rounded(inches / CENTIMETRE),
    cloth: (yards) => rounded(yards / METRE),
  },
};

function rounded(value: number): number {
  return Number(value.toFixed(2));
}

function titleIn(title: string, units: Units): string {
  return units === 'inches' ? title : title.replace('inches', 'centimetres').replace('Yards', 'Metres');
}

function battingText({ batting }: WorkedSize['cloth'], { units }: Said): string {
  const say = units === 'inches' ? fractionOf : centimetresOf;
  return `${say(batting.width.value)} × ${say(batting.height.value)} ${units}`;
}

function namesIn({ fabrics }: Pattern): (fabric: string) => string {
  const names = new Map(fabrics.map(({ id, name }) => [id, name]));
  return (fabric) => names.get(fabric) ?? fabric;
}

function filled(cells: Cells, length: number): Cells {
  return [...cells, ...Array<string>(length - cells.length).fill('')];
}

function pieceCells(line: PieceLine, fabric: string, { units, length }: Said): Cells {
  const { letter, count, width, height, spare } = line;
  const then = afterCutText(line, units);
  const cut = [length(width.value), length(height.value), cutSizeText(line, units)];
  return [fabric, letter, count.value, ...cut, then, spare, usedFor(line)];
}

function stripCells({ plan }: FabricNeed, fabric: string, { units, length }: Said): readonly Cells[] {
  const text = (height: number) =>
    units === 'inches' ? `${fractionOf(height)} inches` : `${centimetresOf(height)} centimetres`;
  return plan.strips.flatMap(({ times, height, pieces }) =>
    pieces.map((piece): Cells => {
      const strip = [fabric, times, length(height), text(height)];
      return [...strip, piece.letter, piece.count, length(piece.width), length(piece.height)];
    }),
  );
}

function needCells({ uses, plan, yards, sheets }: FabricNeed, fabric: string, { units, length, cloth }: Said): Cells {
  const byYard = sheets === undefined || yards.value > 0 ? [yardsText(yards.value, units)] : [];
  const inSheets = sheets === undefined ? [] : [`${sheets.count.value} ${sheets.count.name ?? ''}`];
  const bought = [fabric, uses.join(', '), cloth(yards.value), [...inSheets, ...byYard].join(' and ')];
  return [...bought, plan.stripCount, length(plan.length.value), length(plan.bound), explain(yards, units)];
}

function backingCells({ backing }: WorkedSize['cloth'], fabric: string, { units, cloth }: Said): Cells {
  const { yards, usableWidth } = backing;
  const what =
    backing.cloth === 'wide' ? `backing, wide cloth of ${tracedText(usableWidth, units)} at least` : 'backing';
  return [fabric, what, cloth(yards.value), yardsText(yards.value, units), '', '', '', explain(yards, units)];
}
