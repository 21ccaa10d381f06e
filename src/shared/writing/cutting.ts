import type { FabricNeed, PieceLine, Strip, StripPiece } from '../cloth/cloth.ts';
import { inchesText } from '../measure/fraction.ts';
import { same } from '../measure/inches.ts';
import type { Units } from '../measure/metric.ts';
import { count, given } from '../measure/traced.ts';
import type { WorkedSize } from '../workroom/workedOut.ts';
import type { Block, Chart, ChartRow, Section, Words } from './book.ts';
import { bundleBlocks } from './bundle.ts';
import type { Desk } from './desk.ts';
import { scrapCharts } from './scraps.ts';
import { sheetBlocks } from './sheets.ts';
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
      ...printWords(desk),
      { kind: 'chart', chart: piecesChart(desk) },
      { kind: 'heading', text: 'Strip by strip' },
      {
        kind: 'words',
        tone: 'body',
        text: [
          `Cut these strips across the width of the fabric, then the pieces from them: ${EXAMPLE[desk.units]} high, that `,
          'give fifteen pieces C. Where a line has several letters, each of its strips gives the same. A piece with a star is lower than its strip: trim it.',
          ...joinedWords(desk),
        ],
      },
      { kind: 'chart', chart: stripsChart(desk) },
      ...scrapCharts(desk),
      ...sheetBlocks(desk),
      ...bundleBlocks(desk),
    ],
  };
}

/** What is said of prints that have a direction: once for all that have the same. */
function printWords({ pattern, sizes }: Desk): readonly Block[] {
  const cut = new Set(sizes.flatMap(({ cloth }) => cloth.pieces.map(({ fabric }) => fabric)));
  return (['one-way', 'two-way'] as const).flatMap((way): Block[] => {
    const names = pattern.fabrics
      .filter(({ id, direction }) => direction === way && cut.has(id))
      .map(({ name }) => name);
    if (names.length === 0) return [];
    const [are, their] =
      names.length === 1 ? [` is a ${way} print. Its`, 'it stands'] : [` are ${way} prints. Their`, 'they stand'];
    const text: Words = [
      ...listed(names),
      `${are} pieces are cut so that ${their} upright in the quilt: the long side across the cloth, or, where the chart says `,
      '“lengthwise”, along the selvage. Do not turn them, and lay squares upright as you sew.',
    ];
    return [{ kind: 'words', tone: 'body', text }];
  });
}

function listed(names: readonly string[]): Words {
  return names.flatMap((name, i) => [i === 0 ? '' : i === names.length - 1 ? ' and ' : ', ', { strong: name }]);
}

/** A line of the chart of strips, read aloud. */
const EXAMPLE: Readonly<Record<Units, string>> = {
  inches: '“3 × 4″: 15 C” is three strips, four inches',
  centimetres: '“3 × 10 cm: 15 C” is three strips, ten centimetres',
};

function joinedWords({ sizes, units }: Desk): Words {
  const letter = sizes.flatMap(({ cloth }) => cloth.pieces).find(({ joined }) => joined !== undefined)?.letter;
  return letter === undefined
    ? []
    : [` “${units === 'inches' ? '12″' : '30 cm'} of ${letter}” is an end to be joined into ${letter}.`];
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
  return [
    field(line.count),
    ' – ',
    ...sizeWords(line),
    ...joined,
    ...(line.lengthwise ? [' lengthwise'] : []),
    ...cutUpWords(line),
  ];
}

/** ", cut twice diagonally" for squares that become triangles. */
function cutUpWords({ cutUp }: PieceLine): Words {
  if (cutUp === undefined) return [];
  return [cutUp.into === 2 ? ', cut once diagonally' : ', cut twice diagonally'];
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
    const lines = needs.map((need, i) =>
      need === undefined ? [] : stripLines(need, sizes[i] as WorkedSize, desk.units),
    );
    const most = Math.max(...lines.map((its) => its.length));
    if (most === 0) return [];
    return [
      { group: { fabric: id }, cells: [[{ strong: name }], totalWords(needs)] },
      ...Array.from({ length: most }, (_, i): ChartRow => ({ cells: lines.map((its) => its[i] ?? ['']) })),
    ];
  });
  return {
    id: 'strips',
    columns: sizes.map(({ size }) => ({ title: size.name, align: 'left', share: 1 })),
    rows,
  };
}

/** The strips of one fabric in one size, a line for each kind: "4 × 6¼″: 18 C, 22 J*". */
function stripLines({ plan }: FabricNeed, { cloth }: WorkedSize, units: Units): readonly Words[] {
  return alikeTogether(plan.strips).map(({ height, times, pieces }): Words => {
    const from = pieces.map((piece) => pieceText(piece, height, { usable: plan.width, lines: cloth.pieces, units }));
    return [field(count(times, 'strips')), ' × ', field(given(height, 'height')), `: ${from.join(', ')}`];
  });
}

interface StripLine {
  readonly height: number;
  readonly times: number;
  /** From all of these strips together. */
  readonly pieces: readonly StripPiece[];
}

/** Strips of one height that give one kind of piece only are one line, the last of them less full than the others. */
function alikeTogether(strips: readonly Strip[]): readonly StripLine[] {
  const lines: StripLine[] = [];
  for (const { height, times, pieces: inEach } of strips) {
    const pieces = inEach.map((piece) => ({ ...piece, count: piece.count * times }));
    const at = pieces.length > 1 ? -1 : lines.findIndex((line) => isAlike(line, height, pieces[0]));
    const known = lines[at];
    if (known === undefined) lines.push({ height, times, pieces });
    else lines[at] = { height, times: known.times + times, pieces: added(known.pieces, pieces) };
  }
  return lines;
}

function isAlike(line: StripLine, height: number, piece: StripPiece | undefined): boolean {
  const [only, ...others] = line.pieces;
  if (piece === undefined || only === undefined || others.length > 0 || !same(line.height, height)) return false;
  return only.letter === piece.letter && same(only.width, piece.width) && same(only.height, piece.height);
}

function added(a: readonly StripPiece[], b: readonly StripPiece[]): readonly StripPiece[] {
  return a.map((piece, i) => ({ ...piece, count: piece.count + (b[i]?.count ?? 0) }));
}

/** "18 C"; with a star when it is lower than its strip; "K" for whole strips and "12″ of K" for an end of a joined one. */
function pieceText(
  piece: StripPiece,
  height: number,
  { usable, lines, units }: { readonly usable: number; readonly lines: readonly PieceLine[]; readonly units: Units },
): string {
  const { letter, count: many } = piece;
  const star = same(piece.height, height) ? '' : '*';
  const line = lines.find((one) => one.letter === letter && one.joined !== undefined);
  if (line !== undefined && !same(piece.width, usable)) return `${inchesText(piece.width, units)} of ${letter}${star}`;
  return line !== undefined || many === 1 ? `${letter}${star}` : `${many} ${letter}${star}`;
}

/** "8 · 23 · 31 strips", a dash for a size that takes none. */
function totalWords(needs: readonly (FabricNeed | undefined)[]): Words {
  const last = needs.at(-1)?.plan.stripCount;
  const counts = needs.flatMap(
    (need, i): Words => [
      ...(i === 0 ? [] : [' · ']),
      need === undefined ? '–' : field(count(need.plan.stripCount, 'strips')),
    ],
  );
  return [...counts, last === 1 ? ' strip' : ' strips'];
}
