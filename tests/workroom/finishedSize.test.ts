import { expect, test } from 'vitest';
import { explain } from '../../src/shared/measure/traced.ts';
import type { Unit } from '../../src/shared/piecing/piecing.ts';
import { finishedSize } from '../../src/shared/workroom/finishedSize.ts';

test('a unit of 4 by 2 on a grid of 1⅛ inches finishes at 4½ by 2¼, and says why', () => {
  const unit = { kind: 'geese', key: '', width: 4, height: 2, roles: ['a', 'b'] } as Unit;
  const { width, height } = finishedSize(unit, 1.125);
  // Computed: 4 × 1⅛ and 2 × 1⅛.
  expect([width.value, height.value]).toEqual([4.5, 2.25]);
  expect(explain(width)).toBe('4½″ finished = 4 of the grid × 1⅛ finished');
});
