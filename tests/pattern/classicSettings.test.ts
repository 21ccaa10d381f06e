import { describe, expect, test } from 'vitest';
import { darkCorner } from '../../src/shared/drawing/darkCorner.ts';
import { blockAt } from '../../src/shared/pattern/motif.ts';
import { type DarkCorner, type MotifTemplate, motifFor } from '../../src/shared/pattern/motifTemplate.ts';
import type { Setting } from '../../src/shared/pattern/schema.ts';
import { lower } from '../../src/shared/piecing/lower.ts';
import { motifTemplates } from '../helpers/motifs.ts';
import { starter, starterBook } from '../helpers/starters.ts';

const templates = motifTemplates();
const named = (id: string) => templates.find((template) => template.id === id) as MotifTemplate;
const CORNERS: readonly DarkCorner[] = ['top-left', 'top-right', 'bottom-right', 'bottom-left'];

/** Which corner of every block is dark, in a quilt of so many blocks. Clockwise from the top left: 0, 1, 2, 3. */
function darks(template: MotifTemplate, dark: DarkCorner, across: number, down: number): number[][] {
  const made = motifFor(template, ['A', 'B'], dark);
  if (made === null) throw new Error(template.id);
  const setting: Setting = { kind: 'straight', single: [], ...made };
  const at = blockAt({ setting, sizes: [{ id: 'only', name: 'Only', across, down, block: 8, borders: {} }] });
  return Array.from({ length: down }, (_, row) =>
    Array.from({ length: across }, (__, column) => {
      const turn = at('only', column, row)?.turn;
      if (turn === undefined || turn.mirrored) throw new Error('a block is missing or mirrored');
      return (CORNERS.indexOf(dark) + turn.quarters) % 4;
    }),
  );
}

/** Whether a block whose dark half is in this corner is dark along a side. */
const isDark: Readonly<Record<'top' | 'right' | 'bottom' | 'left', readonly number[]>> = {
  top: [0, 1],
  right: [1, 2],
  bottom: [2, 3],
  left: [3, 0],
};

/** How many seams between neighbours have dark on one side and light on the other. */
function breaks(all: readonly (readonly number[])[]): number {
  let found = 0;
  all.forEach((row, r) => {
    row.forEach((corner, c) => {
      const right = row[c + 1];
      const below = all[r + 1]?.[c];
      if (right !== undefined && isDark.right.includes(corner) !== isDark.left.includes(right)) found += 1;
      if (below !== undefined && isDark.bottom.includes(corner) !== isDark.top.includes(below)) found += 1;
    });
  });
  return found;
}

describe('the classic settings of split blocks', () => {
  // The trade's names and pictures: common practice, from memory.
  const flowing = ['straight-furrows', 'barn-raising', 'sunshine-and-shadow', 'streak-of-lightning'];

  test.each(flowing.flatMap((id) => CORNERS.map((dark) => [id, dark] as const)))(
    '%s flows on over every seam, whichever corner of the block is dark: %s',
    (id, dark) => {
      for (const [across, down] of [
        [4, 6],
        [8, 8],
        [2, 2],
      ] as const)
        expect(breaks(darks(named(id), dark, across, down)), `${across} × ${down}`).toBe(0);
    },
  );

  test('straight furrows run all one way: dark in two opposite corners only', () => {
    const corners = new Set(darks(named('straight-furrows'), 'bottom-left', 6, 6).flat());
    expect(corners).toEqual(new Set([1, 3]));
  });

  test('a barn raising is the same on both sides of the middle, and its diamonds run round it', () => {
    const all = darks(named('barn-raising'), 'top-right', 6, 8);
    const acrossOf = [1, 0, 3, 2];
    for (const row of all) expect(row).toEqual([...row].reverse().map((corner) => acrossOf[corner]));
    const downOf = [3, 2, 1, 0];
    expect(all).toEqual([...all].reverse().map((row) => row.map((corner) => downOf[corner])));
    // In the lower right quarter the furrows run up to the right: dark upper left or lower right.
    const quarter = all.slice(4).map((row) => row.slice(3));
    expect(new Set(quarter.flat())).toEqual(new Set([0, 2]));
  });

  test('in sunshine and shadow the four blocks about a meeting point are all dark there, or all light', () => {
    const all = darks(named('sunshine-and-shadow'), 'bottom-left', 6, 6);
    const meets = (r: number, c: number) => [
      all[r]?.[c] === 2,
      all[r]?.[c + 1] === 3,
      all[r + 1]?.[c] === 1,
      all[r + 1]?.[c + 1] === 0,
    ];
    expect(meets(0, 0)).toEqual([true, true, true, true]);
    expect(meets(1, 1)).toEqual([false, false, false, false]);
  });
});

test('every setting has the name and the blocks it needs', () => {
  expect(templates.length).toBeGreaterThanOrEqual(8);
  for (const template of templates) {
    const letters = new Set(template.motif.join(' ').match(/[A-Z]/g));
    expect(letters.size).toBe(template.blocks);
    expect(motifFor(template, [], 'bottom-left')).toBeNull();
  }
});

describe('the dark corner of a block', () => {
  const cornerOf = (id: string, dark: readonly string[]) => {
    const lowered = lower(starter(id), {}, starterBook(), '');
    if (!lowered.ok) throw new Error(id);
    return darkCorner(lowered.value.drawing, (role) => (dark.includes(role) ? 1 : 0));
  };

  test('is where the dark logs of a log cabin are', () => {
    expect(cornerOf('log-cabin', ['dark'])).toBe('bottom-left');
    expect(cornerOf('log-cabin', ['light'])).toBe('top-right');
  });

  test('is none in a block that is the same on all sides', () => {
    expect(cornerOf('courthouse-steps', ['dark'])).toBeNull();
    expect(cornerOf('churn-dash', ['dash'])).toBeNull();
  });
});
