import type { Inches } from './inches.ts';

/**
 * How much a finding matters: 'stops' cannot be published, 'look' should be looked at again, 'note' is worth knowing.
 */
export type Level = 'stops' | 'look' | 'note';

/** Where something is: a path in the document (`sizes[1].borders[0]`) and, on the quilt or block, a spot in inches. */
export interface Place {
  /** Path in the saved document, as a person with a text editor would find it. */
  readonly path: string;
  /** The name of the size it concerns; absent when it concerns every size. */
  readonly size?: string;
  /** What is drawn there: a block's id, or 'quilt' for the whole top. */
  readonly on?: string;
  /** The spot in the units of what is drawn (inches on the quilt, grid units in a block). */
  readonly box?: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
}

/** One thing that does not fit, or might not: what, where, by how much, and how to mend it. */
export interface Finding {
  readonly level: Level;
  /** A whole sentence in the trade's words. */
  readonly what: string;
  readonly where: Place;
  /** By how many inches, when it is a matter of length. */
  readonly by?: Inches;
  /** One sentence: the smallest thing that would mend it. */
  readonly mend?: string;
}

/** A result that may be refused: the refusal is data, never an exception. */
export type Maybe<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly findings: readonly Finding[] };

/** A refusal for one reason. */
export function refuse(
  what: string,
  path: string,
  mend?: string,
): { readonly ok: false; readonly findings: Finding[] } {
  return { ok: false, findings: [{ level: 'stops', what, where: { path }, ...(mend === undefined ? {} : { mend }) }] };
}

/** An accepted result. */
export function accept<T>(value: T): { readonly ok: true; readonly value: T } {
  return { ok: true, value };
}

/** Whether any finding stops publishing. */
export function anyStops(findings: readonly Finding[]): boolean {
  return findings.some((finding) => finding.level === 'stops');
}
