import type { Piece } from '../pieces/piece.ts';
import { cutAt } from './cutAt.ts';

/** A piece at its height on a page, points from the frame's top; one that is `again` was read on a page before. */
export interface Placed {
  readonly piece: Piece;
  readonly y: number;
  readonly again: boolean;
}

export type Page = readonly Placed[];

/** Rounding in sums of heights never turns a page. */
const SLACK = 0.01;

/**
 * Puts pieces on pages of a height in points. Pieces that keep with the next stay together; a piece taller than a page is
 * cut between its lines; nothing is ever left out.
 * @throws Error when a piece is taller than a page and cannot be cut: whoever made it should have made it smaller
 */
export function paginate(pieces: readonly Piece[], height: number): readonly Page[] {
  const pages = new Pages(height);
  for (const group of groups(pieces)) {
    if (group[0]?.newPage || !pages.fits(group)) pages.turn();
    for (const piece of group) pages.place(piece);
  }
  return pages.done();
}

function groups(pieces: readonly Piece[]): Piece[][] {
  const found: Piece[][] = [];
  let open = false;
  for (const piece of pieces) {
    if (open) found.at(-1)?.push(piece);
    else found.push([piece]);
    open = piece.keepWithNext === true;
  }
  return found;
}

/** The pages so far, the last of them being filled. */
class Pages {
  readonly #height: number;
  readonly #full: Page[] = [];
  #page: Placed[] = [];
  #y = 0;
  /** Space the last piece wants under it. */
  #after = 0;

  constructor(height: number) {
    this.#height = height;
  }

  fits(group: readonly Piece[]): boolean {
    const [first] = group;
    if (first === undefined || this.#page.length === 0) return true;
    const inside = group.slice(1).reduce((sum, piece, i) => sum + gap(group[i], piece) + piece.height, first.height);
    return inside <= this.#room(first) + SLACK;
  }

  turn(): void {
    if (this.#page.length > 0) this.#full.push(this.#page);
    this.#page = [];
    this.#y = 0;
    this.#after = 0;
  }

  place(piece: Piece): void {
    if (piece.fill !== undefined) {
      if (piece.height > this.#room(piece)) this.turn();
      this.#put(piece.fill(this.#room(piece)));
      this.turn();
      return;
    }
    let rest: Piece | null = piece;
    while (rest !== null) {
      const room = this.#room(rest);
      const cut: { readonly here: Piece | null; readonly rest: Piece | null } =
        rest.height <= room + SLACK ? { here: rest, rest: null } : this.#cut(rest, room);
      if (cut.here === null) this.turn();
      else this.#put(cut.here);
      rest = cut.rest;
    }
  }

  done(): readonly Page[] {
    this.turn();
    return this.#full;
  }

  /** Whole on the next page if that is enough, else cut here. */
  #cut(piece: Piece, room: number): { readonly here: Piece | null; readonly rest: Piece } {
    const started = this.#page.length > 0;
    if (started && piece.height <= this.#height - heightOf(piece.again ?? [])) return { here: null, rest: piece };
    const cut = cutAt(piece, room);
    if (cut !== null) return cut;
    if (started) return { here: null, rest: piece };
    throw new Error(`A part of the book is ${Math.ceil(piece.height)} points tall and cannot be cut to fit its page`);
  }

  #room(piece: Piece): number {
    const above = this.#page.length === 0 ? heightOf(piece.again ?? []) : Math.max(this.#after, piece.before);
    return this.#height - this.#y - above;
  }

  #put(piece: Piece): void {
    if (this.#page.length > 0) this.#y += Math.max(this.#after, piece.before);
    else for (const head of piece.again ?? []) this.#add(head, true);
    this.#add(piece, false);
  }

  #add(piece: Piece, again: boolean): void {
    this.#page.push({ piece, y: this.#y, again });
    this.#y += piece.height;
    this.#after = piece.after ?? 0;
  }
}

function gap(above: Piece | undefined, piece: Piece): number {
  return Math.max(above?.after ?? 0, piece.before);
}

function heightOf(pieces: readonly Piece[]): number {
  return pieces.reduce((sum, piece) => sum + piece.height, 0);
}
