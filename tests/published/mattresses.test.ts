import { expect, test } from 'vitest';
import { mattressTables } from '../../src/main/mattressTables.ts';

// Country Crossroads Quilters (guild): crib 28×52, twin 39×75, twin XL 39×80, full 54×75, queen 60×80, king 76×80,
// California king 72×84.
test('the mattresses that come with the program measure what is published, with their source', () => {
  const [table] = mattressTables('resources');
  expect(table?.source).toBe('Country Crossroads Quilters (guild)');
  expect(table?.mattresses.map(({ id, width, length }) => [id, width, length])).toEqual([
    ['crib', 28, 52],
    ['twin', 39, 75],
    ['twin-xl', 39, 80],
    ['full', 54, 75],
    ['queen', 60, 80],
    ['king', 76, 80],
    ['california-king', 72, 84],
  ]);
});
