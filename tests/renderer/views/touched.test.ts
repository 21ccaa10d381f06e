import { expect, test } from 'vitest';
import { alongWay, touchedAt } from '../../../src/renderer/quilt/brush/touched.ts';
import type { Pattern } from '../../../src/shared/pattern/schema.ts';
import { workOut } from '../../../src/shared/workroom/workOut.ts';
import { testPattern } from '../../helpers/fixtures.ts';

const ebb: Pattern = {
  ...testPattern('ebb'),
  sizes: [{ id: 'only', name: 'Only', across: 2, down: 2, block: 6, borders: {} }],
};

function workedIn(motif: string[], kind: 'straight' | 'on-point') {
  const laid = { motif, single: [] };
  const setting: Pattern['setting'] =
    kind === 'straight' ? { kind, ...laid } : { kind, ...laid, triangles: { fabric: 'sand', fit: 'exact' } };
  const worked = workOut({ ...ebb, borders: [], setting });
  const [one] = worked.sizes;
  if (one === undefined) throw new Error('not laid out');
  return { quilt: one.quilt, blocks: worked.blocks };
}

test('a block turned a half has at a point the role it has at the opposite point as drawn', () => {
  const [drawn, turned] = [workedIn(['A'], 'straight'), workedIn(['A:180'], 'straight')];
  for (const x of [0.4, 1.7, 2.9, 5.5]) {
    for (const y of [0.3, 2.2, 4.1]) {
      const one = touchedAt(drawn.quilt, drawn.blocks, { x, y });
      const other = touchedAt(turned.quilt, turned.blocks, { x: 6 - x, y: 6 - y });
      expect(one?.kind).toBe('role');
      expect(one?.kind === 'role' && one.role).toEqual(other?.kind === 'role' && other.role);
    }
  }
});

test('on point the corners of the quilt are triangles, and the middle of the first block is a block', () => {
  const { quilt, blocks } = workedIn(['A'], 'on-point');
  expect(touchedAt(quilt, blocks, { x: 0.5, y: 0.5 })).toMatchObject({ kind: 'piece', piece: { use: 'corner' } });
  const half = 6 * Math.SQRT1_2;
  expect(touchedAt(quilt, blocks, { x: half, y: half })).toMatchObject({ kind: 'role', leaf: { column: 0, row: 0 } });
});

test('a way is walked in steps no longer than asked', () => {
  const points = alongWay(
    [
      { x: 0, y: 0 },
      { x: 3, y: 4 },
    ],
    1,
  );
  expect(points).toHaveLength(6);
  expect(points.at(-1)).toEqual({ x: 3, y: 4 });
});
