import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { troubleWith } from '../../src/renderer/parts/NumberField.tsx';
import { fractionOf } from '../../src/shared/measure/fraction.ts';
import { readNumber } from '../../src/shared/measure/read.ts';

describe('inches as a maker types them', () => {
  it.each([
    ['8 1/2', 8.5],
    ['8-1/2', 8.5],
    ['8½', 8.5],
    ['8.5', 8.5],
    ['8,5', 8.5],
    ['17/2', 8.5],
    ['8 1⁄2', 8.5],
    ['8 ½″', 8.5],
    ['8 1/2"', 8.5],
    ['8 1/2 in', 8.5],
    ['1 / 4', 0.25],
    ['⅜', 0.375],
    ['.25', 0.25],
    ['12', 12],
    ['2⅓', 2 + 1 / 3],
  ])('%s', (text, inches) => {
    expect(readNumber(text)).toBeCloseTo(inches, 12);
  });

  it.each(['', 'wide', '1/0', '8 1', '1/2/3', '8..5', '-3', '8½½', '1e3'])('“%s” is no length', (text) => {
    expect(readNumber(text)).toBeNull();
  });

  it('reads back every sixty-fourth exactly as it is printed', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 64 * 200 }), (parts) => {
        expect(readNumber(fractionOf(parts / 64))).toBe(parts / 64);
      }),
    );
  });
});

describe('a number that may not stand', () => {
  it('is told in words that say what may', () => {
    expect(troubleWith('wide', {})).toBe('Write inches, such as 8½, 8 1/2 or 8.5.');
    expect(troubleWith('1/8', { least: 0.25 })).toBe('At least ¼″.');
    expect(troubleWith('90', { most: 60 })).toBe('At most 60″.');
    expect(troubleWith('2½', { unit: 'count' })).toBe('Write a whole number.');
    expect(troubleWith('2½', { least: 0.25, most: 60 })).toBeNull();
  });
});
