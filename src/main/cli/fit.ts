import { inchesText, sizeText } from '../../shared/measure/fraction.ts';
import type { Units } from '../../shared/measure/metric.ts';
import { plain, type TracedSize } from '../../shared/measure/traced.ts';
import { workOut } from '../../shared/workroom/workOut.ts';
import { EXIT } from './exit.ts';
import { findingsText } from './findings.ts';
import { fitFacts, type PatternFit, type SizeFit } from './fitFacts.ts';
import { jsonText } from './json.ts';
import { openPattern } from './open.ts';
import type { Source } from './source.ts';
import { letters, sizesPerTable, tableText } from './table.ts';
import type { Terminal } from './terminal.ts';

/** `piecewright fit FILE`: the sizes side by side, and everything that does not fit. */
export function runFit(file: string, json: boolean, terminal: Terminal): number {
  const { source, pattern } = openPattern(file);
  const facts = fitFacts(workOut(pattern));
  terminal.say(json ? jsonText({ file, ...facts }, facts.units) : fitText(facts, source, terminal.width));
  return facts.fits ? EXIT.fine : EXIT.findings;
}

/** What `fit` tells, as text. */
export function fitText(facts: PatternFit, source: Source, width: number): string {
  const findings = findingsText(facts.findings, source);
  const parts = [
    `${facts.title}, edition ${facts.edition}`,
    ...sizeTables(facts, width),
    ...sewnText(facts),
    ...(findings === '' ? [] : [findings]),
    verdict(facts),
  ];
  return parts.join('\n\n');
}

/** "Sewn in rows. Rows are usual, …"; nothing where only single blocks are sewn, or no size can be laid out. */
function sewnText({ assembly, sizes }: PatternFit): readonly string[] {
  const rows = sizes.some(({ blocks }) => blocks.across * blocks.down > 1);
  return rows ? [`Sewn in ${assembly.way}.\n${assembly.why}`] : [];
}

/** One line that says the truth: "Fits in all 3 sizes." */
export function verdict({ fits, sizes, unfit, findings }: PatternFit): string {
  const all = sizes.length + unfit.filter((name) => !sizes.some((size) => size.name === name)).length;
  const again = findings.some(({ level }) => level === 'look') ? ' Some things are worth another look.' : '';
  if (fits) return `${fitsIn(all)}${again}`;
  const fitting = all - unfit.length;
  if (fitting === 0) return all === 1 ? 'Does not fit.' : 'Fits in none of its sizes.';
  return `Fits in ${fitting} of ${all} sizes; not in ${unfit.join(', ')}.`;
}

function fitsIn(sizes: number): string {
  if (sizes === 1) return 'Fits.';
  return sizes === 2 ? 'Fits in both sizes.' : `Fits in all ${sizes} sizes.`;
}

function sizeTables({ sizes, units }: PatternFit, width: number): readonly string[] {
  const rows = rowsOf(sizes, units);
  const first = Math.max(...rows.map(([title]) => letters(title)));
  const each = Math.max(...sizes.map(({ name }) => letters(name)), ...rows.flatMap(([, cells]) => cells.map(letters)));
  return sizesPerTable(sizes, { first, each, width }).map(({ from, to }) =>
    tableText(
      [{ title: '' }, ...sizes.slice(from, to).map(({ name }) => ({ title: name }))],
      rows.map(([title, cells]) => [title, ...cells.slice(from, to)]),
    ),
  );
}

type FactRow = readonly [title: string, cells: readonly string[]];

function rowsOf(sizes: readonly SizeFit[], units: Units): readonly FactRow[] {
  const row = (title: string, of: (size: SizeFit) => string): FactRow => [title, sizes.map(of)];
  return [
    row('Finished', ({ finished }) => tracedSizeText(finished, units)),
    row('Unfinished top', ({ unfinished }) => tracedSizeText(unfinished, units)),
    row('Blocks', blocksText),
    row('Block, finished', ({ blocks }) => sizeText(blocks.finished.width, blocks.finished.height, units)),
    ...settingRows(sizes, units),
    ...triangleRows(sizes, units),
    ...borderRows(sizes, units),
    row('Points to match', ({ points }) => points.toLocaleString('en')),
    row('Seams that nest', ({ seams }) => seams.nest.toLocaleString('en')),
    row('Seams that stack', ({ seams }) => seams.stack.toLocaleString('en')),
    row('Points that lie open', ({ seams }) => seams.open.toLocaleString('en')),
    row('Fits', ({ fits }) => (fits ? 'yes' : 'no')),
  ];
}

function blocksText({ setting, rows, blocks }: SizeFit): string {
  if (setting === 'straight') return `${blocks.down} ${blocks.down === 1 ? 'row' : 'rows'} of ${blocks.across}`;
  const all = rows.reduce((sum, many) => sum + many, 0);
  const word = setting === 'on-point' ? 'diagonal row' : 'strip';
  return `${all} in ${rows.length} ${word}${rows.length === 1 ? '' : 's'}`;
}

function tracedSizeText(size: TracedSize, units: Units): string {
  const { width, height } = plain(size);
  return sizeText(width, height, units);
}

function settingRows(sizes: readonly SizeFit[], units: Units): readonly FactRow[] {
  const titles = sizes.flatMap(({ pieces }) => pieces.map(({ what }) => what));
  return [...new Set(titles)].map((title) => [
    `${title}, cut`,
    sizes.map(({ pieces }) => {
      const own = pieces.filter(({ what }) => what === title);
      return own.map(({ count, cut }) => `${count} of ${tracedSizeText(cut, units)}`).join(', ') || '–';
    }),
  ]);
}

function triangleRows(sizes: readonly SizeFit[], units: Units): readonly FactRow[] {
  const titles = sizes.flatMap(({ triangles }) => triangles.map(({ what }) => what));
  return [...new Set(titles)].map((title) => [
    `${title}, cut`,
    sizes.map(({ triangles }) => {
      const own = triangles.filter(({ what }) => what === title);
      const texts = own.map(
        (one) => `${one.triangles} from ${one.squares.value} of ${inchesText(one.square.value, units)}, ${one.cut}`,
      );
      return texts.join(', ') || '–';
    }),
  ]);
}

function borderRows(sizes: readonly SizeFit[], units: Units): readonly FactRow[] {
  const titles = sizes.flatMap(({ borders }) => borders.map(({ name, strips }) => `${name}, ${strips}`));
  return [...new Set(titles)].map((title) => [
    `${title}, cut`,
    sizes.map(({ borders }) => {
      const own = borders.filter(({ name, strips }) => `${name}, ${strips}` === title);
      return (
        own.map(({ count, cut }) => `${count} of ${sizeText(cut.width.value, cut.length.value, units)}`).join(', ') ||
        '–'
      );
    }),
  ]);
}
