import { describe, expect, test } from 'vitest';
import { anyStops } from '../../src/shared/measure/finding.ts';
import { type Pattern, patternSchema, type Setting, type Size } from '../../src/shared/pattern/schema.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { demoPattern } from '../helpers/starters.ts';

const demo = demoPattern();

/** The demo's blocks as few as can be, without borders. */
function few(setting: Partial<Setting>, across: number, down: number, block: number) {
  const size: Size = { id: 'few', name: 'Few', across, down, block, borders: {} };
  const pattern = { ...demo, borders: [], sizes: [size], setting: { motif: ['A'], single: [], ...setting } } as Pattern;
  const worked = workOut(pattern);
  const [sized] = worked.sizes;
  if (sized === undefined) throw new Error('It cannot be laid out');
  expect(anyStops(worked.findings)).toBe(false);
  const { width, height } = sized.quilt.finished;
  return { ...sized, finished: [width.value, height.value] };
}

const sashing = { strips: [{ fabric: 'sand', width: 2 }], cornerstones: 'deep' };
const triangles = { fabric: 'sand' };

describe('the fewest blocks', () => {
  // By hand: 1 × 9 and 4 × 9; three seams between four blocks.
  test('one column is sewn of blocks alone', () => {
    const { finished, quilt } = few({ kind: 'straight' }, 1, 4, 9);
    expect(finished).toEqual([9, 36]);
    expect(quilt.blocks).toHaveLength(4);
    expect(quilt.root).toMatchObject({ kind: 'row', along: 'down' });
  });

  // By hand: three sashings of 2 between four blocks, and outside five of them and two columns: 9 + 4 by 36 + 10.
  test.each([
    [false, [9, 42], 3],
    [true, [13, 46], 5 + 2 * 4],
  ])('one column with sashing, outside too: %s', (outside, measure, sashes) => {
    const own = { ...sashing, ...(outside ? { outside } : {}) };
    const { finished, quilt } = few({ kind: 'straight', sashing: own }, 1, 4, 9);
    expect(finished).toEqual(measure);
    expect(quilt.patches.filter(({ use }) => use === 'sashing')).toHaveLength(sashes);
  });

  test('one block is a quilt', () => {
    const { finished, quilt } = few({ kind: 'straight' }, 1, 1, 9);
    expect(finished).toEqual([9, 9]);
    expect(quilt.root).toMatchObject({ kind: 'block' });
  });

  // Plain geometry: a row of a blocks on point is a × 6√2 by 6√2, up to the next eighth: 25.456 → 25½, 8.485 → 8½; with
  // sashing of 2 all round, 8√2 each: 33.941 → 34, 11.314 → 11⅜. 2(a − 1) side triangles, 4 corners, no blocks between.
  test.each([
    [undefined, 3, [25.5, 8.5]],
    [sashing, 3, [34, 11.375]],
    [undefined, 1, [8.5, 8.5]],
  ])('on point with one row', (sashes, across, measure) => {
    const own = { kind: 'on-point' as const, triangles, ...(sashes === undefined ? {} : { sashing: sashes }) };
    const { finished, quilt } = few(own, across, 1, 6);
    expect(finished).toEqual(measure);
    expect(quilt.blocks).toHaveLength(across);
    expect(quilt.triangles.filter(({ use }) => use === 'side')).toHaveLength(2 * (across - 1));
    expect(quilt.triangles.filter(({ use }) => use === 'corner')).toHaveLength(4);
  });

  // The same turned: one column on point is as high as a row is wide.
  test('on point with one column', () => {
    expect(few({ kind: 'on-point', triangles }, 1, 3, 6).finished).toEqual([8.5, 25.5]);
  });
});

// Quilting magazine, February 2020: at least 4 beyond each side.
test('the backing reaches 4 inches beyond each side until the designer says otherwise', () => {
  const { backing } = patternSchema.parse({ ...demo, backing: { fabric: 'foam' } });
  expect(backing.beyond).toBe(4);
});
