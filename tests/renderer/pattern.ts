import type { Edit } from '../../src/shared/pattern/edit.ts';
import { type Pattern, patternSchema } from '../../src/shared/pattern/schema.ts';

/** A small pattern of our own for tests of the window: one block, three sizes. */
export function smallPattern(more: Partial<Pattern> = {}): Pattern {
  const parsed = patternSchema.parse({
    format: 'piecewright-pattern',
    version: 1,
    id: 'low-tide',
    title: 'Low Tide',
    edition: { number: 1, date: '2026-01-01' },
    words: { designer: 'Saltmarsh & Thread' },
    recipes: [],
    blocks: [{ id: 'A', name: 'Shell', recipe: 'shell' }],
    fabrics: [{ id: 'sand', name: 'Sand', value: 'light', colour: '#e8dcc0' }],
    setting: { kind: 'straight', motif: ['A'] },
    borders: [{ id: 'outer', name: 'Outer border', fabric: 'sand', width: 4 }],
    binding: { fabric: 'sand' },
    backing: { fabric: 'sand' },
    sizes: [
      { id: 'cot', name: 'Cot', across: 3, down: 4, block: 12 },
      { id: 'lap', name: 'Lap', across: 4, down: 5, block: 12 },
      { id: 'double', name: 'Double', across: 6, down: 7, block: 12 },
    ],
  });
  return { ...parsed, recipes: [], ...more };
}

/** Widens a border: the edit of these tests. */
export const widen: Edit<{ readonly to: number }> = {
  id: 'test-widen',
  name: ({ to }, pattern) => `make ${pattern.borders[0]?.name.toLowerCase()} ${to}`,
  apply: (pattern, { to }) => {
    const [border] = pattern.borders;
    if (border === undefined || border.width === to) return pattern;
    return { ...pattern, borders: [{ ...border, width: to }] };
  },
};

/** The width that edit changes. */
export function widthOf(pattern: Pattern | undefined): number | undefined {
  return pattern?.borders[0]?.width;
}
