import type { CuttingPlan, PieceLine, Strip } from '../cloth/cloth.ts';
import { same } from '../measure/inches.ts';
import { count, given } from '../measure/traced.ts';
import type { WorkedSize } from '../studio/workedOut.ts';
import type { Block, Chart, ChartRow, Section, Words } from './book.ts';
import { type Desk, fabricName } from './desk.ts';
import { field, listed, sizeWords } from './words.ts';

/** The cutting chart of all sizes, then for each size how its strips are cut. */
export function cutting(desk: Desk): Section {
  const plans = desk.sizes.flatMap((size): Block[] => [{ kind: 'chart', chart: planChart(desk, size) }]);
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
          'Cut these strips across the width of the fabric, then the pieces from them. ',
          'Where a strip is taller than a piece, trim the piece to its height.',
        ],
      },
      ...plans,
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
  return [field(line.count), ' – ', ...sizeWords(line), ...joined];
}

/** Binding is cut as whole strips and joined. */
function isWholeStrip(line: PieceLine): boolean {
  return line.cutAs === 'long-strip' && line.use.some(({ unit }) => unit === 'binding');
}

function planChart(desk: Desk, size: WorkedSize): Chart {
  const rows = size.cloth.needs.flatMap((need): ChartRow[] => {
    const { plan } = need;
    const head: Words = [
      { strong: fabricName(desk.pattern, need.fabric) },
      ', ',
      field(need.yards),
      ': ',
      field(count(plan.stripCount, 'strips')),
      plan.stripCount === 1 ? ' strip, ' : ' strips, ',
      proofWords(plan),
    ];
    return [{ group: { fabric: need.fabric }, cells: [head] }, ...plan.strips.map(stripRow)];
  });
  return {
    id: `strips-${size.size.id}`,
    title: `${size.size.name}: strips to cut`,
    columns: [
      { title: 'Strips', align: 'left', share: 1 },
      { title: 'Height', align: 'left', share: 1 },
      { title: 'From each', align: 'left', share: 6 },
    ],
    rows,
  };
}

/** How good the plan is, as proved. */
function proofWords({ proven, bound, length }: CuttingPlan): string {
  if (proven) return 'and less cloth cannot do';
  return `at most ${Math.max(1, Math.ceil((1 - bound / length.value) * 100))} % more than the least possible`;
}

function stripRow(strip: Strip): ChartRow {
  const pieces = new Map<string, number>();
  for (const { letter, count: many } of strip.pieces) pieces.set(letter, (pieces.get(letter) ?? 0) + many);
  const trimmed = strip.pieces.filter((piece) => !same(piece.height, strip.height)).map(({ letter }) => letter);
  const from = [...pieces].map(([letter, many]) => (many === 1 ? letter : `${many} ${letter}`));
  const trims = trimmed.length === 0 ? [] : [` (trim ${listed([...new Set(trimmed)])} to height)`];
  return {
    cells: [[field(count(strip.times, 'strips'))], [field(given(strip.height, 'height'))], [listed(from), ...trims]],
  };
}
