import { extent, type Item, moved } from '../engine/items.ts';

/** What a part of the page is, for those who read by ear (the standard structure types of PDF 1.7, 14.8.4). */
type Tag =
  | 'H1'
  | 'H2'
  | 'H3'
  | 'P'
  | 'L'
  | 'LI'
  | 'Lbl'
  | 'LBody'
  | 'Table'
  | 'TR'
  | 'TH'
  | 'TD'
  | 'Figure'
  | 'Caption';

/** A part of a piece that is read: its own items first, then the parts inside it. */
export interface Content {
  readonly tag: Tag;
  readonly items: readonly Item[];
  readonly inside?: readonly Content[];
  readonly alt?: string;
  readonly scope?: 'Column' | 'Row';
  /** Columns of its table that it runs over, when more than one. */
  readonly span?: number;
  /** The end of a part that was begun on the page before. */
  readonly goesOn?: boolean;
}

/** What several pieces belong to, such as the table of all its rows. One object, one element. */
export interface Holder {
  readonly tag: 'Table' | 'L';
}

/** What is never parted: a paragraph, a chart's row, a step with its figures. */
export interface Piece {
  readonly height: number;
  /** Space above it, dropped at the top of a page; the larger of this and the space under the piece above counts. */
  readonly before: number;
  /** Space under it. */
  readonly after?: number;
  readonly content: readonly Content[];
  /** Marks that say nothing: tones, rules. Drawn first. */
  readonly decor: readonly Item[];
  readonly keepWithNext?: boolean;
  /** Begins a new page. */
  readonly newPage?: boolean;
  readonly holder?: Holder;
  /** Drawn above it when it is the first on a page: the chart's head. */
  readonly again?: readonly Piece[];
  readonly bookmark?: { readonly title: string; readonly level: 1 | 2 };
  /** A page that carries it has no running foot. */
  readonly noFoot?: boolean;
  /** Takes the rest of its page; made for the room that is left. The `height` is then the least it can do with. */
  readonly fill?: (room: number) => Piece;
}

/** A part of the page and everything inside it, moved. */
export function movedContent(content: Content, dx: number, dy: number): Content {
  const items = content.items.map((item) => moved(item, dx, dy));
  if (content.inside === undefined) return { ...content, items };
  return { ...content, items, inside: content.inside.map((part) => movedContent(part, dx, dy)) };
}

/** Every item of a part and of the parts inside it. */
export function itemsOf(content: Content): readonly Item[] {
  return [...content.items, ...(content.inside ?? []).flatMap(itemsOf)];
}

/** The lowest point of some parts. */
export function bottomOf(content: readonly Content[]): number {
  return Math.max(0, ...content.flatMap(itemsOf).map((item) => extent(item).bottom));
}
