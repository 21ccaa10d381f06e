import type { Pattern } from './schema.ts';

/**
 * One thing a designer can do to a pattern: a named pure function from the document and its arguments to a new document.
 * Undo is the document before it, so an edit needs no inverse.
 */
export interface Edit<Args> {
  /** Stays the same for good: commands and tests call the edit by it. */
  readonly id: string;
  /** What the act is called beside "Undo" and "Redo", such as "widen outer border". */
  name(args: Args, pattern: Pattern): string;
  /** The document after the act; the very same document when the act changes nothing. */
  apply(pattern: Pattern, args: Args): Pattern;
}
