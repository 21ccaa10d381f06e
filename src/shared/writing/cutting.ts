import type { FabricNeed, PieceLine, Strip } from '../cloth/cloth.ts';
import { same } from '../measure/inches.ts';
import { count, given } from '../measure/traced.ts';
import type { WorkedSize } from '../workroom/workedOut.ts';
import type { Chart, ChartRow, Section, Words } from './book.ts';
import type { Desk } from './desk.ts';
import { field, sizeWords } from './words.ts';

/** What is cut in every size, then strip by strip how. */
export function cutting(desk: Desk): Section {
  return {
    id: 'cutting',
    title: 'Cutting',
    newPage: true,
    blocks: [
      {
        kind: 'words',
        tone: 'body',
        text: [
          'Cut the largest pieces first and mark each pile with its letter; a letter means the same piece in every size, ',
          'in every step and in every figure.',
        ],
      },
      { kind: 'chart', chart: piecesChart(desk) },
      { kind: 'heading', text: 'Strip by strip' },
      {
        kind: 'words',
        tone: 'body',
        text: [
          'Cut these strips across the width of the fabric, then the pieces from them: “',
          field(count(3, 'strips')),
          ' × 4″: 5 C” is three strips, four inches high, with five pieces C cut from each. ',
          'Trim a piece with a star to its own height: it is lower than its strip.',
        ],
      },
      { kind: 'chart', chart: stripsChart(desk) },
    ],
  };
}

function piecesChart(desk: Desk): Chart {
  const letters = [...new Set(desk.sizes.flatMap(({ cloth }) => cloth.pieces.map(({ letter }) => letter)))].sort(
    byLetter,
  );
  const rows = desk.pattern.fabrics.flatMap(({ id, name }): ChartRow[] => {
    const its = letters.filter((letter) => linesOf(desk.sizes, letter)[0]?.fabric === id);
    if (its.length === 0) return [];
    return [{ group: { fabric: id }, cells: [[{ strong: name }]] }, ...its.map((letter) => pieceRow(desk, letter))];
  });
  return {
    id: 'pieces',
    title: 'Pieces to cut',
    columns: [
      { title: '', align: 'left', share: 0.7 },
      { title: 'For', align: 'left', share: 3.4 },
      ...desk.sizes.map(({ size }) => ({ title: size.name, align: 'left' as const, share: 2.6 })),
    ],
    rows,
  };
}

/** A, B … Z, AA, AB … */
function byLetter(a: string, b: string): number {
  return a.length - b.length || (a < b ? -1 : 1);
}

function linesOf(sizes: readonly WorkedSize[], letter: string): readonly PieceLine[] {
  return sizes.flatMap(({ cloth }) => cloth.pieces.filter((line) => line.letter === letter));
}

function pieceRow(desk: Desk, letter: string): ChartRow {
  const uses = new Set(linesOf(desk.sizes, letter).flatMap((line) => line.use.map(({ words }) => words)));
  const cells = desk.sizes.map(({ cloth }): Words => {
    const lines = cloth.pieces.filter((line) => line.letter === letter);
    return lines.length === 0
      ? ['–']
      : lines.flatMap((line, i) => [...(i === 0 ? [] : [' and ']), ...pieceWords(line)]);
  });
  return { cells: [[{ strong: letter }], [[...uses].join('; ')], ...cells] };
}

/** "32 – 3⅛″ square", "3 strips 1⅝″ × WOF", "2 – 47½″ × 3″ from 3 strips". */
function pieceWords(line: PieceLine): Words {
  if (line.cutAs === 'strip-set' || isWholeStrip(line)) {
    return [field(line.count), line.count.value === 1 ? ' strip ' : ' strips ', field(line.height), ' × WOF'];
  }
  const joined: Words = line.joined === undefined ? [] : [' from ', field(line.joined), ' strips'];
  return [field(line.count), ' – ', ...sizeWords(line), ...joined, ...(line.lengthwise ? [' lengthwise'] : [])];
}

/** Binding is cut as whole strips and joined. */
function isWholeStrip(line: PieceLine): boolean {
  return line.cutAs === 'long-strip' && line.use.some(({ unit }) => unit === 'binding');
}

/** Fabric by fabric, the strips of every size side by side. */
function stripsChart(desk: Desk): Chart {
  const { pattern, sizes } = desk;
  const rows = pattern.fabrics.flatMap(({ id, name }): ChartRow[] => {
    const needs = sizes.map(({ cloth }) => cloth.needs.find((need) => need.fabric === id));
    const most = Math.max(...needs.map((need) => need?.plan.strips.length ?? 0));
    if (most === 0) return [];
    const lines = Array.from({ length: most }, (_, i): ChartRow => {
      return { cells: needs.map((need) => stripWords(need?.plan.strips[i])) };
    });
    return [
      { group: { fabric: id }, cells: [[{ strong: name }]] },
      ...lines,
      { cells: needs.map((need) => (need === undefined ? ['–'] : proofWords(need))) },
    ];
  });
  return {
    id: 'strips',
    title: 'Strips to cut',
    columns: sizes.map(({ size }) => ({ title: size.name, align: 'left', share: 1 })),
    rows,
  };
}

/** "3 × 6¼″: 5 C, 5 I*". */
function stripWords(strip: Strip | undefined): Words {
  if (strip === undefined) return [''];
  const many = new Map<string, number>();
  for (const piece of strip.pieces) {
    const letter = same(piece.height, strip.height) ? piece.letter : `${piece.letter}*`;
    many.set(letter, (many.get(letter) ?? 0) + piece.count);
  }
  const from = [...many].map(([letter, times]) => (times === 1 ? letter : `${times} ${letter}`));
  return [field(count(strip.times, 'strips')), ' × ', field(given(strip.height, 'height')), `: ${from.join(', ')}`];
}

/** The strips in all, and how good the plan is, as proved. */
function proofWords({ plan, least }: FabricNeed): Words {
  const strips: Words = [field(count(plan.stripCount, 'strips')), plan.stripCount === 1 ? ' strip; ' : ' strips; '];
  if (plan.proven) return [...strips, 'less cloth cannot do'];
  if (least) return [...strips, 'fewer yards cannot do'];
  return [...strips, `at most ${Math.max(1, Math.ceil((1 - plan.bound / plan.length.value) * 100))} % over the least`];
}
