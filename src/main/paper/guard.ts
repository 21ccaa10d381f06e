import type { Block, Book, ChartRow, Section, Step, Words } from '../../shared/writing/book.ts';
import { extent, type Item } from './engine/items.ts';
import type { Content } from './pieces/piece.ts';
import type { Sheet } from './sheet.ts';
import { plainText } from './words.ts';

/** Printers at home leave about this much of the edge bare, points. */
const UNPRINTABLE = 18;
const PART = '\n';

/** What was put on pages, as it was put there. */
export class Drawn {
  readonly #parts: string[] = [];

  /**
   * Notes a part that was just drawn.
   * @throws Error when some of it lies outside what a printer can print
   */
  record(part: Content, sheet: Sheet, y: number): void {
    for (const item of part.items) keepInside(item, sheet, y);
    const text = bare(part.items.map((item) => (item.kind === 'text' ? item.text : '')).join(''));
    if (text !== '') this.#parts.push((part.goesOn ? '' : PART) + text);
  }

  /** Everything that was drawn, in order, without spaces. */
  text(): string {
    return this.#parts.join('') + PART;
  }
}

function keepInside(item: Item, sheet: Sheet, y: number): void {
  const bottom = sheet.top + y + extent(item).bottom;
  const left = sheet.left + ('x' in item ? item.x : 0);
  const right = item.kind === 'text' ? left + item.width : item.kind === 'figure' ? left + item.width : left;
  const fits = left >= UNPRINTABLE && right <= sheet.width - UNPRINTABLE && bottom <= sheet.height - UNPRINTABLE;
  if (!fits)
    throw new Error(
      `A part of the book would be printed over the edge: ${item.kind === 'text' ? item.text : item.kind}`,
    );
}

/**
 * Looks whether everything in the book was drawn, in order: every paragraph, step and row of a chart.
 * @throws Error naming the first that is missing
 */
export function assertWhole(book: Book, drawn: Drawn): void {
  const text = drawn.text();
  let from = 0;
  for (const wanted of book.sections.flatMap((section) => sectionTexts(book, section))) {
    const found = [wanted].flat().map((one) => {
      const at = text.indexOf(bare(one), from);
      if (at < 0) throw new Error(`The PDF lacks a part of the book: “${one.replaceAll(PART, ' | ')}”`);
      return at;
    });
    from = Math.max(from, ...found);
  }
}

/** White space and marks for line breaking do not count, nor how an accent is spelled. */
function bare(text: string): string {
  return text
    .normalize('NFC')
    .replace(/\n/gu, '\u0000')
    .replace(/[\s\u2060\u200b\ufeff\u00ad]/gu, '')
    .replaceAll('\u0000', PART);
}

/** A text, or several that may come in any order. */
type Wanted = string | readonly string[];

/** A section with a cover has no title above it. */
function sectionTexts(book: Book, section: Section): Wanted[] {
  const covered = section.blocks.some((block) => block.kind === 'cover');
  return [covered ? '' : section.title, ...section.blocks.flatMap((block) => textsOf(book, block))];
}

function textsOf(book: Book, block: Block): Wanted[] {
  switch (block.kind) {
    case 'cover':
      return [book.title, ...block.sizes.map((size) => size.name), ...block.skills];
    case 'heading':
      return [block.text];
    case 'words':
      return [line(block.text)];
    case 'list':
      return block.items.map(line);
    case 'caution':
      return [block.title, ...block.items.map(line)];
    case 'chart':
      return [
        block.chart.title ?? '',
        ...block.chart.columns.map(({ title }) => title),
        ...block.chart.rows.flatMap(rowTexts),
      ];
    case 'steps':
      return block.steps.flatMap((step, i) => [`${PART}${block.firstNumber + i}${PART}`, ...stepTexts(step)]);
    case 'figures':
      return block.figures.map((figure) => line(figure.caption ?? []));
    case 'whole-page-figure':
      return [line(block.caption)];
    case 'test-square':
      return [];
    case 'true-size':
      // Figures lie where there is room for them.
      return [line(block.words), block.figures.map((figure) => line(figure.caption ?? []))];
  }
}

function line(words: Words): string {
  return plainText(words).replaceAll('\n', ' ');
}

/** A row is looked for whole, its cells one after the other; a group's cells stand in one line. */
function rowTexts(row: ChartRow): string[] {
  const cells = row.cells.map(line).filter((cell) => cell.trim() !== '');
  return row.group === undefined ? [PART + cells.join(PART) + PART] : cells;
}

function stepTexts(step: Step): string[] {
  const counts =
    step.perSize?.values.map(({ size, value }) => `${size}${plainText([{ field: value, show: 'count' }])}`) ?? [];
  return [...step.words.map(line), ...counts, ...step.figures.map((figure) => line(figure.caption ?? []))];
}
