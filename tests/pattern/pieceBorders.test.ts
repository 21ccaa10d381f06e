import { expect, test } from 'vitest';
import { changeInside, pieceBorderOf, setBorderPieced } from '../../src/shared/pattern/edits/index.ts';
import type { Pattern } from '../../src/shared/pattern/schema.ts';
import { closingsOf } from '../../src/shared/quilt/find/closingsOf.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { testPattern } from '../helpers/fixtures.ts';
import { starter } from '../helpers/starters.ts';

const card = testPattern('compass-card');

test('a border pieced of another block leaves the block behind that stood only there', () => {
  const after = pieceBorderOf.apply(card, { border: 'glasses', recipe: starter('flying-geese') });
  expect(after.blocks.map(({ id, recipe }) => [id, recipe])).toEqual([
    ['A', 'sawtooth-star'],
    ['B', 'pinwheel'],
    ['D', 'flying-geese'],
  ]);
  expect(after.borders.find(({ id }) => id === 'glasses')?.pieced).toEqual({ units: 'D' });
});

test('a block that stands elsewhere as well stays', () => {
  const shared = setBorderPieced.apply(card, { border: 'glasses', units: 'B' });
  const after = pieceBorderOf.apply(shared, { border: 'glasses', recipe: starter('flying-geese') });
  expect(after.blocks.map(({ id }) => id)).toEqual(['A', 'B', 'C', 'D']);
  // C was left over before; it is told, not taken away.
  const told = workOut(after).findings.filter(({ where }) => where.path.startsWith('blocks['));
  expect(told.map(({ what }) => what)).toEqual([
    'Block C, Hourglass, stands nowhere in the quilt: it is not cut and not printed.',
  ]);
});

/** The first way of changing what is inside that is found for a border. */
function firstChange(pattern: Pattern, border: string) {
  const [size] = workOut(pattern).sizes.slice(1);
  const change = size === undefined ? undefined : closingsOf(size.quilt, border, pattern.house)?.changes[0];
  if (change === undefined) throw new Error('no change is found');
  return change;
}

test('“make what is inside it wider” is applied by the numbers it names: by the plain border inside', () => {
  // 24 and 2 × 2½ of rim are 29: hourglasses of 6 want 30, half an inch more on each side.
  const open = { ...card, borders: card.borders.map((one) => (one.id === 'rim' ? { ...one, width: 2.5 } : one)) };
  const { wider, higher } = firstChange(open, 'glasses');
  expect([wider, higher]).toEqual([1, 1]);
  const shut = changeInside.apply(open, { border: 'glasses', size: 'wall', wider, higher });
  expect(shut.sizes.map(({ borders }) => borders.rim)).toEqual([0, 3, undefined]);
  const [, wall] = workOut(shut).sizes;
  expect(wall?.findings.filter(({ level }) => level === 'stops')).toEqual([]);
});

test('or by the blocks where no plain border lies inside', () => {
  const bare: Pattern = {
    ...card,
    borders: card.borders.filter(({ id }) => id === 'vanes'),
    sizes: [{ id: 'wall', name: 'Wall', across: 1, down: 1, block: 13, borders: {} }],
  };
  const shut = changeInside.apply(bare, { border: 'vanes', size: 'wall', wider: -1, higher: -1 });
  expect(shut.sizes[0]?.block).toBe(12);
  expect(changeInside.apply(bare, { border: 'vanes', size: 'wall', wider: 1, higher: 2 })).toBe(bare);
});
