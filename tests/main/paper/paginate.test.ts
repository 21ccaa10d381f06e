import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FillItem } from '../../../src/main/paper/engine/items.ts';
import { type Page, paginate } from '../../../src/main/paper/flow/paginate.ts';
import type { Piece } from '../../../src/main/paper/pieces/piece.ts';

const HEIGHT = 600;
const LINE = 14;

/** A piece of so many lines, each a bar of its own height; its id is the colour of its bars. */
function piece(id: string, lines: number, more: Partial<Piece> = {}): Piece {
  const bars = Array.from(
    { length: lines },
    (_, i): FillItem => ({ kind: 'fill', x: 0, y: i * LINE, width: 10, height: LINE, colour: id }),
  );
  return { height: lines * LINE, before: 7, content: [{ tag: 'P', items: bars }], decor: [], ...more };
}

const pieces = fc
  .array(
    fc.record({ lines: fc.integer({ min: 1, max: 70 }), keep: fc.boolean(), newPage: fc.integer({ min: 0, max: 9 }) }),
    { maxLength: 40 },
  )
  .map((all) =>
    all.map(({ lines, keep, newPage }, i) =>
      piece(String(i), lines, { keepWithNext: keep, ...(newPage === 0 ? { newPage: true } : {}) }),
    ),
  );

function bars(pages: readonly Page[]): string[] {
  const content = pages.flatMap((page) =>
    page.filter((placed) => !placed.again).flatMap(({ piece: { content } }) => content),
  );
  return content.flatMap((part) => part.items.map((item) => ('colour' in item ? item.colour : '')));
}

describe('pieces on pages', () => {
  it('keep every line, in order, inside the page and clear of each other', () => {
    fc.assert(
      fc.property(pieces, (all) => {
        const pages = paginate(all, HEIGHT);
        expect(bars(pages)).toEqual(bars([all.map((one) => ({ piece: one, y: 0, again: false }))]));
        for (const page of pages) {
          let bottom = 0;
          for (const placed of page) {
            expect(placed.y).toBeGreaterThanOrEqual(bottom - 1e-6);
            bottom = placed.y + placed.piece.height;
          }
          expect(bottom).toBeLessThanOrEqual(HEIGHT + 0.02);
        }
      }),
    );
  });

  it('are cut only when they are taller than a page', () => {
    fc.assert(
      fc.property(pieces, (all) => {
        const placed = paginate(all, HEIGHT).flat();
        for (const one of all.filter(({ height }) => height <= HEIGHT)) {
          const id = one.content[0]?.items[0];
          const parts = placed.filter(({ piece: { content } }) =>
            content[0]?.items.some(
              (item) => 'colour' in item && id !== undefined && 'colour' in id && item.colour === id.colour,
            ),
          );
          expect(parts).toHaveLength(1);
        }
      }),
    );
  });

  it('leave no heading at the foot of a page', () => {
    const heading = piece('heading', 2, { keepWithNext: true });
    const pages = paginate([piece('a', 39), heading, piece('b', 4)], HEIGHT);
    expect(pages.map((page) => page.map(({ piece: one }) => one.height / LINE))).toEqual([[39], [2, 4]]);
  });

  it('say a chart’s head again above the row that begins a page', () => {
    const head = piece('head', 2);
    const rows = Array.from({ length: 60 }, (_, i) => piece(`row ${i}`, 1, { before: 0, again: [head] }));
    const pages = paginate([head, ...rows], HEIGHT);
    expect(pages).toHaveLength(2);
    expect(pages[1]?.[0]).toMatchObject({ again: true, y: 0 });
    expect(pages[1]?.[1]).toMatchObject({ again: false, y: 2 * LINE });
  });

  it('give what fills its page all the room that is left, and nothing after it there', () => {
    const fill = piece('least', 10, { fill: (room) => piece('fill', Math.floor(room / LINE)) });
    const pages = paginate([piece('title', 2), fill, piece('next', 1)], HEIGHT);
    expect(pages).toHaveLength(2);
    expect(pages[0]?.[1]?.piece.height).toBe(Math.floor((HEIGHT - 2 * LINE - 7) / LINE) * LINE);
  });

  it('are never dropped: what is too tall and cannot be cut is said out loud', () => {
    const block: Piece = {
      height: 900,
      before: 0,
      decor: [],
      content: [{ tag: 'P', items: [{ kind: 'fill', x: 0, y: 0, width: 9, height: 900, colour: 'x' }] }],
    };
    expect(() => paginate([block], HEIGHT)).toThrow('cannot be cut');
  });
});
