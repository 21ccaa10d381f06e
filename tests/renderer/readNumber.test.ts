import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { troubleWith } from '../../src/renderer/parts/NumberField.tsx';
import { fractionOf } from '../../src/shared/measure/fraction.ts';
import { readLength, readNumber } from '../../src/shared/measure/read.ts';
import { rulerIn } from '../../src/shared/measure/ruler.ts';

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
    expect(readLength(text, 'inches')).toBeCloseTo(inches, 12);
  });

  it.each(['', 'wide', '1/0', '8 1', '1/2/3', '8..5', '-3', '8½½', '1e3'])('“%s” is no length', (text) => {
    expect(readNumber(text)).toBeNull();
    expect(readLength(text, 'inches')).toBeNull();
    expect(readLength(text, 'centimetres')).toBeNull();
  });

  it('reads back every sixty-fourth exactly as it is printed', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 64 * 200 }), (parts) => {
        expect(readNumber(fractionOf(parts / 64))).toBe(parts / 64);
      }),
    );
  });
});

// 1 in = 25.4 mm and 1 yd = 36 in exactly (NBS Circular 572 addendum, 1960); worked by hand from these.
describe('a unit behind the number counts for more than the ruler', () => {
  it.each([
    ['21.5', 'centimetres', 21.5 / 2.54],
    ['21,5 cm', 'inches', 21.5 / 2.54],
    ['2 1/2', 'centimetres', 2.5 / 2.54],
    ['2 1/2"', 'centimetres', 2.5],
    ['2½ in.', 'centimetres', 2.5],
    ['2½ inches', 'centimetres', 2.5],
    ['65mm', 'inches', 65 / 25.4],
    ['1.27 m', 'inches', 50],
    ['1.27 metres', 'centimetres', 50],
    ['1/4 yd', 'centimetres', 9],
    ['2 yards', 'inches', 72],
  ] as const)('%s on a ruler of %s', (text, units, inches) => {
    expect(readLength(text, units)).toBeCloseTo(inches, 12);
  });

  it.each(['cm', 'm', '″', '5 cmm', '5 ft', '5 cm 3'])('“%s” is no length', (text) => {
    expect(readLength(text, 'inches')).toBeNull();
  });

  it('what either ruler shows in a field is read back as it was, to the twentieth of a millimetre', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 64 * 200 }), fc.constantFrom('inches', 'centimetres'), (parts, units) => {
        const ruler = rulerIn(units);
        const away = Math.abs((ruler.read(ruler.bare(parts / 64)) ?? Number.NaN) - parts / 64);
        expect(away).toBeLessThanOrEqual(0.005 / 2.54 + 1e-12);
        expect(ruler.read(ruler.length(parts / 64))).toBeCloseTo(ruler.read(ruler.bare(parts / 64)) ?? Number.NaN, 9);
      }),
    );
  });
});

describe('a number that may not stand', () => {
  it('is told in words that say what may', () => {
    expect(troubleWith('wide', {})).toMatch(/^Write inches, such as 8½, 8 1\/2 or 8\.5,/);
    expect(troubleWith('1/8', { least: 0.25 })).toBe('At least ¼″.');
    expect(troubleWith('90', { most: 60 })).toBe('At most 60″.');
    expect(troubleWith('2½', { unit: 'count' })).toBe('Write a whole number.');
    expect(troubleWith('2½', { least: 0.25, most: 60 })).toBeNull();
  });

  it('is told in centimetres on a metric ruler, and what it says may stand does', () => {
    const metric = rulerIn('centimetres');
    expect(troubleWith('wide', {}, metric)).toMatch(/^Write centimetres, such as 21 or 21\.5,/);
    expect(troubleWith('153', { most: 60 }, metric)).toBe('At most 152.4 cm.');
    expect(troubleWith('152.4', { most: 60 }, metric)).toBeNull();
    expect(troubleWith('0.1', { least: 0.0625 }, metric)).toBe('At least 0.16 cm.');
    expect(troubleWith('60 in', { most: 60 }, metric)).toBeNull();
    expect(troubleWith('2½', { unit: 'count' }, metric)).toBe('Write a whole number.');
  });
});
