import { describe, expect, test } from 'vitest';
import { lower } from '../../src/shared/piecing/lower.ts';
import { rulerFriendlySizes } from '../../src/shared/piecing/rulerSizes.ts';
import { starter, starterBook } from '../helpers/starters.ts';

function friendly(id: string, sizes: readonly number[], step = 1 / 8): readonly number[] {
  const lowered = lower(starter(id), {}, starterBook(), '');
  if (!lowered.ok) throw new Error(id);
  return rulerFriendlySizes(lowered.value, step, sizes).flatMap(({ size, friendly }) => (friendly ? [size] : []));
}

// Common practice, from memory: blocks of a five-patch grid are made in multiples of 5 inches, of a seven-patch grid in
// multiples of 7, of a nine-patch grid in multiples of 3; others leave parts between the marks of an eighth-inch ruler.
describe('sizes a block can be cut at', () => {
  test.each([
    ['bears-paw', [6, 7, 8, 9, 10, 12, 14, 16], [7, 14]],
    ['ohio-star', [6, 8, 9, 10, 12, 15, 16], [6, 9, 12, 15]],
    ['sawtooth-star', [6, 7, 8, 9, 10, 12], [6, 7, 8, 9, 10, 12]],
  ])('%s', (id, sizes, expected) => {
    expect(friendly(id, sizes)).toEqual(expected);
  });

  test('an eight-point star has its diamonds between the marks at every size', () => {
    expect(friendly('eight-point-star', [6, 8, 9, 10, 12, 14, 16])).toEqual([]);
  });

  test('a finer ruler takes more sizes', () => {
    const sizes = Array.from({ length: 20 }, (_, i) => 4 + i / 2);
    expect(friendly('sawtooth-star', sizes, 1 / 16).length).toBeGreaterThan(
      friendly('sawtooth-star', sizes, 1 / 4).length,
    );
  });

  test('the reason names the unit and the length', () => {
    const lowered = lower(starter('bears-paw'), {}, starterBook(), '');
    if (!lowered.ok) throw new Error('bears-paw');
    const [ten, fourteen] = rulerFriendlySizes(lowered.value, 1 / 8, [10, 14]);
    expect(ten?.why).toMatch(/^.+: .+″ is between the ⅛″ marks\.$/);
    expect(fourteen).toEqual({ size: 14, friendly: true, why: 'Every length falls on the ⅛″ marks.' });
  });
});
