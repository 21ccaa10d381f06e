import type { Chart, Words } from '../../../shared/writing/book.ts';
import { type Desk, narrowest, natural } from '../desk.ts';
import type { Align } from '../engine/setText.ts';
import { atSize, type Style, TYPE } from '../type.ts';

/** A column of a chart: where it stands in the frame, in points. */
export interface Column {
  readonly title: string;
  readonly x: number;
  readonly width: number;
  readonly align: Align;
}

/** Letters and the gap between columns, points. */
interface Setting {
  readonly size: number;
  readonly gap: number;
}

/** Tried in turn until no word has to be broken: first the full size, in which lines may stay whole as well. */
const FULL: readonly Setting[] = [
  { size: 9.5, gap: 14 },
  { size: 9.5, gap: 9 },
];
const SMALLER: readonly Setting[] = [
  { size: 9, gap: 8 },
  { size: 8.5, gap: 8 },
];
const SMALLEST: Setting = { size: 8, gap: 7 };
const ALIGN: Readonly<Record<string, Align>> = { left: 'left', right: 'right', centre: 'center' };
/** A head may take so many lines rather than widen its column; more when that spares the lines of the rows. */
const HEAD_LINES = [2, 3, 5] as const;

/**
 * The widths of a chart's columns, and the size of its letters: the full size if no line has to be broken, or else no
 * word; smaller only when words would not fit.
 * @param indent what swatches take of the first column, points
 */
export function columnsOf(
  desk: Desk,
  chart: Chart,
  indent = 0,
): { readonly columns: readonly Column[]; readonly size: number } {
  const full = FULL.map((setting) => tried(desk, chart, setting, indent));
  const best =
    full.find(({ wants, room }) => sum(wants.map((want) => want.whole)) <= room) ??
    full.find(fits) ??
    firstThatFits(desk, chart, indent);
  return { columns: placed(chart, sharedOut(chart, best.wants, best.room), best.gap), size: best.size };
}

interface Tried extends Setting {
  /** What the columns share between them, points. */
  readonly room: number;
  readonly wants: readonly Wants[];
}

function tried(desk: Desk, chart: Chart, { size, gap }: Setting, indent: number): Tried {
  const room = desk.sheet.frameWidth - gap * (chart.columns.length - 1);
  return { size, gap, room, wants: indented(wantsFor(desk, chart, size, room), indent) };
}

/** Whether no word has to be broken. */
function fits({ wants, room }: Tried): boolean {
  return sum(wants.map((want) => want.least)) <= room;
}

/** The largest of the smaller settings in which no word has to be broken, else the smallest. */
function firstThatFits(desk: Desk, chart: Chart, indent: number): Tried {
  for (const setting of SMALLER) {
    const one = tried(desk, chart, setting, indent);
    if (fits(one)) return one;
  }
  return tried(desk, chart, SMALLEST, indent);
}

function indented(wants: readonly Wants[], indent: number): Wants[] {
  return wants.map((want, i) => (i > 0 ? want : { least: want.least + indent, whole: want.whole + indent }));
}

/** How narrow a column can be with no word broken, and how wide it would be with no line broken. */
interface Wants {
  readonly least: number;
  readonly whole: number;
}

function wantsFor(desk: Desk, chart: Chart, size: number, room: number): Wants[] {
  const heads = chart.columns.map(({ title }) => wantsOf(desk, [[title]], TYPE.chartHead));
  const bodies = chart.columns.map((_, i) => wantsOf(desk, cellsOf(chart, i), atSize(TYPE.chart, size)));
  const headed = (lines: number) =>
    alike(
      chart,
      bodies.map((body, i) => joined(body, heads[i], lines)),
    );
  return HEAD_LINES.map(headed).find((wants) => sum(wants.map((want) => want.whole)) <= room) ?? headed(HEAD_LINES[2]);
}

function cellsOf(chart: Chart, i: number): Words[] {
  return chart.rows.filter((row) => row.group === undefined).map((row) => row.cells[i] ?? []);
}

function wantsOf(desk: Desk, cells: readonly Words[], style: Style): Wants {
  return {
    least: Math.max(0, ...cells.map((cell) => narrowest(desk, cell, style))) + 0.01,
    whole: Math.max(0, ...cells.map((cell) => natural(desk, cell, style))) + 0.01,
  };
}

function joined(body: Wants, head: Wants | undefined, lines: number): Wants {
  const least = Math.max(body.least, head?.least ?? 0);
  return { least, whole: Math.max(least, body.whole, (head?.whole ?? 0) / lines) };
}

/** Columns of one share and side are one kind, such as the sizes, and stand at one pitch as far as there is room. */
function alike(chart: Chart, wants: readonly Wants[]): Wants[] {
  return wants.map((want, i) => {
    const kind = chart.columns[i];
    const same = wants.filter(
      (_, j) => chart.columns[j]?.share === kind?.share && chart.columns[j]?.align === kind?.align,
    );
    return { least: want.least, whole: Math.max(...same.map((one) => one.whole)) };
  });
}

/** Every column gets its least; what is left is given where lines would break, and what is left then by the shares. */
function sharedOut(chart: Chart, wants: readonly Wants[], room: number): number[] {
  const least = sum(wants.map((want) => want.least));
  if (least > room) return wants.map((want) => (want.least * room) / least);
  const whole = sum(wants.map((want) => want.whole));
  if (whole > room)
    return wants.map((want) => want.least + ((want.whole - want.least) * (room - least)) / (whole - least));
  const shares = sum(chart.columns.map((column) => column.share));
  return wants.map((want, i) => want.whole + ((room - whole) * (chart.columns[i]?.share ?? 0)) / shares);
}

function placed(chart: Chart, widths: readonly number[], gap: number): Column[] {
  let x = 0;
  return chart.columns.map((column, i) => {
    const width = widths[i] ?? 0;
    const here = { title: column.title, x, width, align: ALIGN[column.align] ?? 'left' };
    x += width + gap;
    return here;
  });
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}
