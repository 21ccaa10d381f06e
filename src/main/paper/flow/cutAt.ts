import { extent, type Item, moved } from '../engine/items.ts';
import { type Content, itemsOf, type Piece } from '../pieces/piece.ts';

const ABOVE = Number.NEGATIVE_INFINITY;

/** Cutting off less than this leaves a line alone. */
const LEAST = 24;

/**
 * Cuts a piece between its lines so that the first part is no taller than `room`; null when no line is free there. Figures
 * are never cut. The second part begins at its own top.
 */
export function cutAt(piece: Piece, room: number): { readonly here: Piece; readonly rest: Piece } | null {
  const items = piece.content.flatMap(itemsOf);
  const y = lowestGap(items, room);
  if (y < LEAST || y >= piece.height) return null;
  const { bookmark: _, newPage: __, ...rest } = piece;
  return {
    // What stands above the piece's own top, such as a tall number, belongs to the first part.
    here: { ...piece, height: y, content: parts(piece.content, ABOVE, y), decor: decorIn(piece.decor, ABOVE, y) },
    rest: {
      ...rest,
      before: 0,
      height: piece.height - y,
      content: parts(piece.content, y, piece.height),
      decor: decorIn(piece.decor, y, piece.height),
    },
  };
}

/** The lowest height within `room` that no item straddles; 0 when there is none. */
function lowestGap(items: readonly Item[], room: number): number {
  const ends = items.map(extent);
  const free = (y: number) => ends.every(({ top, bottom }) => bottom <= y + 0.01 || top >= y - 0.01);
  const candidates = [...ends.map((end) => end.bottom), room].filter((y) => y <= room).sort((a, b) => b - a);
  return candidates.find(free) ?? 0;
}

function inside(item: Item, from: number, to: number): boolean {
  const { top, bottom } = extent(item);
  return top >= from - 0.01 && bottom <= to + 0.01;
}

function parts(content: readonly Content[], from: number, to: number): Content[] {
  const start = Math.max(0, from);
  return content.flatMap((part) => {
    const items = part.items.filter((item) => inside(item, from, to)).map((item) => moved(item, 0, -start));
    const within = parts(part.inside ?? [], from, to);
    if (items.length === 0 && within.length === 0) return [];
    const goesOn = from > 0 && itemsOf(part).some((item) => extent(item).top < from - 0.01);
    return [
      { ...part, items, ...(part.inside === undefined ? {} : { inside: within }), ...(goesOn ? { goesOn } : {}) },
    ];
  });
}

/** Tones are cut with the piece, other marks stay whole on the side they begin on. */
function decorIn(decor: readonly Item[], from: number, to: number): Item[] {
  const start = Math.max(0, from);
  return decor.flatMap((item): Item[] => {
    const { top, bottom } = extent(item);
    if (item.kind === 'fill') {
      const y = Math.max(top, from);
      const height = Math.min(bottom, to) - y;
      return height > 0 ? [{ ...item, y: y - start, height } satisfies Item] : [];
    }
    return top >= from && top < to + 0.01 ? [moved(item, 0, -start)] : [];
  });
}
