import { describe, expect, test } from 'vitest';
import { patchWords, placeWords } from '../../../src/renderer/block/draw/placeWords.ts';
import { placeText } from '../../../src/shared/drawing/spot.ts';
import { at, drawn, roleName, three } from './blocks.ts';

const drawing = drawn(4, three);

describe('a place as it is spoken', () => {
  test.each([
    [at(0, 0), '0 across, 0 down, corner of Sand'],
    [at(2, 2), '2 across, 2 down, corner of Sand and Star points'],
    [at(1, 2), '1 across, 2 down, edge of Star points and Sand'],
    [at(2, 1), '2 across, 1 down, edge of Sand'],
    [at(2.5, 3), '2½ across, 3 down, inside Star points'],
    [at(5, 3), '5 across, 3 down, outside the block'],
  ])('%o', (place, words) => {
    expect(placeWords(drawing, place, roleName)).toBe(words);
  });

  test('has fractions where a grid has them, and decimals where none would do', () => {
    expect(placeText(at(4 / 3, 2.9289321))).toBe('1⅓ across, 2.929 down');
    expect(placeText(at(-1e-12, 1 / 8))).toBe('0 across, ⅛ down');
  });
});

test('a patch is spoken by its role, its number and about where it is', () => {
  expect(patchWords(drawing, 1, at(2.1, 3), roleName)).toBe('Star points, patch 2 of 3, about 2 across, 3 down');
});
