import type { Figure, Ink, Mark } from '../../../shared/diagrams/figure.ts';
import type { Steps } from '../../../shared/measure/steps.ts';
import type { Pattern } from '../../../shared/pattern/schema.ts';
import { workOutInSteps } from '../../../shared/workroom/workOut.ts';
import type { Section, SectionId } from '../../../shared/writing/book.ts';
import { writeBook } from '../../../shared/writing/writeBook.ts';
import { keepSame } from './keepSame.ts';

/**
 * Sections of the written pattern as they cross from a thread: text, with the marks of every figure apart. The figures of a
 * large quilt are most of a book, and reading them is what would hold the window; so each is read when it is drawn.
 */
export interface FoldedSections {
  /** JSON of the sections; the marks of a figure are a place in `marks`. */
  readonly text: string;
  /** JSON of each figure's marks. */
  readonly marks: readonly string[];
  readonly inks: readonly Ink[];
}

/** What a view reads of the book. */
export interface ReadSections {
  readonly sections: readonly Section[];
  readonly inks: readonly Ink[];
}

/** Works the pattern out, writes it and folds these sections of it. */
export function* writeSections(pattern: Pattern, wanted: readonly SectionId[]): Steps<FoldedSections> {
  const { sections, inks } = writeBook(yield* workOutInSteps(pattern));
  yield { doing: 'The words', done: 1, of: 2 };
  const marks: string[] = [];
  const fold = (key: string, value: unknown) => (key === 'marks' ? marks.push(JSON.stringify(value)) - 1 : value);
  const own = sections.filter(({ id }) => wanted.includes(id));
  return { text: JSON.stringify(own, fold), marks, inks };
}

/** A figure whose marks are read when they are first asked for. */
class FoldedFigure implements Figure {
  readonly width: number;
  readonly height: number;
  readonly alt: string;
  readonly text: string;
  #marks: readonly Mark[] | null = null;

  constructor({ width, height, alt }: Omit<Figure, 'marks'>, text: string) {
    this.width = width;
    this.height = height;
    this.alt = alt;
    this.text = text;
  }

  get marks(): readonly Mark[] {
    this.#marks ??= JSON.parse(this.text) as readonly Mark[];
    return this.#marks;
  }
}

/**
 * Reads folded sections, one book after another: what is written and drawn as in the book before stays the very thing it
 * was, so that nothing of it is read or shown again.
 */
export function bookReader(): (folded: FoldedSections) => ReadSections {
  let figures = new Map<string, FoldedFigure>();
  let before: ReadSections | null = null;
  return ({ text, marks, inks }) => {
    const now = new Map<string, FoldedFigure>();
    const figureOf = (figure: Folded) => {
      const own = marks[figure.marks] ?? '[]';
      const key = `${figure.width} ${figure.height} ${figure.alt} ${own}`;
      const kept = now.get(key) ?? figures.get(key) ?? new FoldedFigure(figure, own);
      now.set(key, kept);
      return kept;
    };
    const read = JSON.parse(text, (_, value: unknown) => (isFolded(value) ? figureOf(value) : value));
    figures = now;
    before = keepSame(before, { sections: read as readonly Section[], inks });
    return before;
  };
}

interface Folded extends Omit<Figure, 'marks'> {
  readonly marks: number;
}

function isFolded(value: unknown): value is Folded {
  return typeof value === 'object' && value !== null && 'marks' in value && typeof value.marks === 'number';
}
