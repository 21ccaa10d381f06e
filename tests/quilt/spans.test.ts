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

  const sashed = (outside: boolean, cornerstones = true): Pattern => ({
    ...base,
    setting: {
      kind: 'straight',
      motif: ['A B B B', 'B B B B', 'B B A B', 'B B B B'],
      single: [],
      sashing: {
        strips: [{ fabric: 'lamp', width: 2 }],
        ...(cornerstones ? { cornerstones: 'wrack' } : {}),
        ...(outside ? { outside } : {}),
      },
    },
    sizes: [{ ...cot, across: 4, down: 4 }],
  });

  // By hand: places of 6 with sashing of 2 between; the large block fills 6 + 2 + 6 = 14. Of the 4 × 4 places two large blocks
  // take 8. Sashings between neighbours: 3 × 4 each way, less the two each way that lie inside the large blocks: 24 − 8.
  // Crossings: 3 × 3, less the two inside.
  test('with sashing and cornerstones a large block takes the sashing between its places, too', () => {
    const { sizes, findings } = workOut(sashed(false));
    expect(findings.filter(({ level }) => level !== 'note')).toEqual([]);
    const quilt = sizes[0]?.quilt;
    expect(quilt?.measures.A).toEqual({ width: 14, height: 14 });
    expect(quilt?.counts).toEqual({ A: 2, B: 8 });
    const patches = quilt?.patches.filter(({ border }) => border === undefined) ?? [];
    expect(patches.filter(({ use }) => use === 'sashing')).toHaveLength(16);
    expect(patches.filter(({ use }) => use === 'cornerstone')).toHaveLength(7);
    expect(quilt?.centre.width.value).toBe(4 * 6 + 3 * 2);
  });

  test('and it may run round the outside', () => {
    const { sizes, findings } = workOut(sashed(true));
    expect(findings.filter(({ level }) => level !== 'note')).toEqual([]);
    const patches = sizes[0]?.quilt.patches.filter(({ border }) => border === undefined) ?? [];
    // Four sides of four sashings more, and crossings on a grid of 5 × 5 less the two inside large blocks.
    expect(patches.filter(({ use }) => use === 'sashing')).toHaveLength(16 + 16);
    expect(patches.filter(({ use }) => use === 'cornerstone')).toHaveLength(25 - 2);
  });

  test('sashing cannot run through beside them, and on point they do not go', () => {
    expect(workOut(sashed(false, false)).findings.map(({ what, where }) => [what, where.path])).toEqual([
      ['Beside blocks that fill several places, sashing cannot run through.', 'setting.sashing.cornerstones'],
    ]);
    const onPoint: Pattern = {
      ...base,
      setting: { kind: 'on-point', motif: ['A'], single: [], triangles: { fabric: 'sand' } },
    };
    const stops = workOut(onPoint).findings.filter(({ level }) => level === 'stops');
    expect(stops.map(({ what }) => what)).toContain(
      `On point, ${base.sizes[0]?.name} is sewn in diagonal rows: a block that fills several places would cut into two of them, and no seam would run from edge to edge.`,
    );
  });

  test('two recipes whose grids have no common measure are still sewn, and the ruler says what is off', () => {
    const { findings, sizes } = workOut({ ...base, sizes: [{ ...cot, block: 6.1 }] });
    expect(sizes).toHaveLength(1);
    expect(findings.some(({ mend }) => mend?.includes('ruler') === true)).toBe(true);
  });
});
