import { describe, expect, test } from 'vitest';
import type { Pattern, Size } from '../../src/shared/pattern/schema.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { testPattern } from '../helpers/fixtures.ts';

const base = testPattern('anchorage');
const [cot] = base.sizes as [Size];

function withMotif(motif: string[], change: Partial<Size> = {}): Pattern {
  return { ...base, setting: { kind: 'straight', motif, single: [] }, sizes: [{ ...cot, ...change }] };
}

describe('blocks of two sizes on one module', () => {
  test('a block that fills four places stands for four, and every seam is matched', () => {
    const { sizes, findings } = workOut(base);
    expect(findings.filter(({ level }) => level !== 'note')).toEqual([]);
    const [first] = sizes;
    // 4 × 6 places of 6 inches with three blocks of four places.
    expect(first?.quilt.counts).toEqual({ A: 3, B: 24 - 12 });
    expect(first?.quilt.measures).toEqual({ A: { width: 12, height: 12 }, B: { width: 6, height: 6 } });
    expect(first?.quilt.centre.width.value).toBe(24);
  });

  test('one that reaches over the edge is told with its place', () => {
    const { findings, sizes } = workOut(withMotif(['B A'], { across: 2, down: 2 }));
    expect(sizes).toEqual([]);
    expect(findings.map(({ what, where }) => [what, where.path])).toEqual([
      ['Block A fills several places and has no room for them at row 1, column 2 of Cot.', 'setting.motif'],
    ]);
  });

  test('a ring of them that no straight seam comes through is told', () => {
    // Four large blocks about a middle, each past the next: no seam runs from edge to edge.
    const ring = ['B A B B B', 'B B B A B', 'A B B B B', 'B B A B B', 'B B B B B'];
    const { findings, sizes } = workOut(withMotif(ring, { across: 5, down: 5 }));
    expect(sizes).toEqual([]);
    expect(findings.map(({ what }) => what)).toEqual([
      'The blocks of Cot lie so that no straight seam runs between them from edge to edge.',
    ]);
  });

  test('sashing between them is refused', () => {
    const sashed: Pattern = {
      ...base,
      setting: { kind: 'straight', motif: ['A'], single: [], sashing: { strips: [{ fabric: 'lamp', width: 1 }] } },
      sizes: [cot],
    };
    expect(workOut(sashed).findings[0]?.what).toContain('without sashing only');
  });

  test('two recipes whose grids have no common measure are still sewn, and the ruler says what is off', () => {
    const { findings, sizes } = workOut({ ...base, sizes: [{ ...cot, block: 6.1 }] });
    expect(sizes).toHaveLength(1);
    expect(findings.some(({ mend }) => mend?.includes('ruler') === true)).toBe(true);
  });
});
