import { fractionOf } from '../../src/shared/measure/fraction.ts';
import type { Pattern } from '../../src/shared/pattern/schema.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import type { Block, Book, SectionId, Words } from '../../src/shared/writing/book.ts';
import { plainText } from '../../src/shared/writing/words.ts';
import { writeBook } from '../../src/shared/writing/writeBook.ts';

/** The written pattern of a pattern. */
export function bookOf(pattern: Pattern): Book {
  return writeBook(workOut(pattern));
}

/** Words as a reader has them, lengths and yards with their fractions. */
export function said(words: Words): string {
  return plainText(
    words,
    ({ value, unit }) => `${fractionOf(value)}${unit === 'inch' ? '″' : unit === 'yard' ? ' yd' : ''}`,
  );
}

/** The blocks of one section; none when the section is left out. */
export function section(book: Book, id: SectionId): readonly Block[] {
  return book.sections.find((one) => one.id === id)?.blocks ?? [];
}

/** Every sentence of a section, its steps' counts included, a line each. */
export function textOf(book: Book, id: SectionId): string {
  return section(book, id).flatMap(linesOf).join('\n');
}

function linesOf(block: Block): readonly string[] {
  switch (block.kind) {
    case 'heading':
      return [block.text];
    case 'words':
      return [said(block.text)];
    case 'list':
    case 'caution':
      return block.items.map(said);
    case 'chart':
      return block.chart.rows.map(({ cells }) => cells.map(said).join(' | '));
    case 'steps':
      return block.steps.flatMap(({ words, perSize }) => [
        ...words.map(said),
        ...(perSize?.values.map(({ size, value }) => `${perSize.label} ${size} ${value.value}`) ?? []),
      ]);
    default:
      return [];
  }
}
