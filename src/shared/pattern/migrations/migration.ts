/** A saved document before its schema has been checked. */
export type Loose = Readonly<Record<string, unknown>>;

/**
 * One step from a format number to the next. Numbered, never changed once released; every step keeps an old file in
 * `tests/fixtures` that proves it.
 */
export interface Migration {
  /** The format number this step starts from. */
  readonly from: number;
  /** The document in the next format. The format number is raised by `migrate`. */
  up(document: Loose): Loose;
}
