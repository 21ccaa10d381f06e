import { describe, expect, test } from 'vitest';
import { setSewn } from '../../src/shared/pattern/edits/index.ts';
import type { Pattern, Sashing, Setting } from '../../src/shared/pattern/schema.ts';
import { leavesOf } from '../../src/shared/piecing/tree.ts';
import { linesIn } from '../../src/shared/quilt/lines.ts';
import type { QuiltLeaf } from '../../src/shared/quilt/quilt.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { testPattern, testPatternNames } from '../helpers/fixtures.ts';

const base = testPattern('anchorage');

function straight(change: Partial<Extract<Setting, { kind: 'straight' }>>, across: number, down: number): Pattern {
  return {
    ...base,
    setting: { kind: 'straight', motif: ['B'], single: [], ...change },
    borders: [],
    sizes: [{ id: 'cot', name: 'Cot', across, down, block: 12, borders: {} }],
  };
}

const through: Sashing = { strips: [{ fabric: 'lamp', width: 2 }] };

describe('a straight setting whose way of sewing is not said', () => {
  test('is sewn in rows when columns are no better', () => {
    const { assembly, sizes } = workOut(straight({}, 3, 4));
    expect(assembly).toMatchObject({ way: 'rows', pinned: false });
    expect(linesIn(sizes[0]?.quilt.root as never, false)).toBe(4);
  });

  // By hand: 2 blocks across and 5 down with sashing of 2. Rows part with 4 sashings of 2 × 12 + 2 = 26 inches: none is
  // joined of cloth that is 40 wide. Columns part with one of 5 × 12 + 4 × 2 = 68 inches, which is joined once.
  test('of two ways that nest alike the one whose sashing is joined less is taken', () => {
    expect(workOut(straight({ sashing: through }, 2, 5)).assembly.way).toBe('rows');
    // Turned on its side, rows part with one sashing of 68 inches and columns with 4 of 26.
    const { assembly, sizes } = workOut(straight({ sashing: through }, 5, 2));
    expect(assembly).toEqual({
      way: 'columns',
      pinned: false,
      why: 'In columns, less of the sashing has to be joined from strips.',
    });
    const long = leavesOf<QuiltLeaf>(sizes[0]?.quilt.root as never).filter(({ box }) => box.height > 20);
    expect(long.map(({ box }) => box.height)).toEqual([26, 26, 26, 26]);
  });

  test('is sewn as the designer says, whatever is better', () => {
    const pinned = setSewn.apply(straight({ sashing: through }, 5, 2), { sewn: 'rows' });
    expect(workOut(pinned).assembly).toEqual({ way: 'rows', pinned: true, why: 'You have chosen rows.' });
    expect(workOut(setSewn.apply(pinned, { sewn: null })).assembly.pinned).toBe(false);
  });
});

test.each(testPatternNames())('%s nests at least as well the way it is sewn as the other way', (name) => {
  const pattern = testPattern(name);
  if (pattern.setting.kind !== 'straight' || pattern.setting.sewn !== undefined) return;
  const own = workOut(pattern);
  const other = workOut(setSewn.apply(pattern, { sewn: own.assembly.way === 'rows' ? 'columns' : 'rows' }));
  own.sizes.forEach((size, i) => {
    const { across, down } = size.size;
    const few = Math.min(...own.sizes.map((one) => one.size.across * one.size.down));
    if (across < 2 || down < 2 || across * down > few) return;
    expect(size.pressing.nests).toBeGreaterThanOrEqual(other.sizes[i]?.pressing.nests ?? 0);
  });
});
