import { describe, expect, test } from 'vitest';
import { INCH_RULER, rulerIn, rulerOn } from '../../src/shared/measure/ruler.ts';
import { count, given, inYards, minus, over, plus, times } from '../../src/shared/measure/traced.ts';

const metric = rulerIn('centimetres');

describe('how a house says lengths', () => {
  test('its ruler’s marks decide', () => {
    expect(rulerOn(1 / 8)).toBe(INCH_RULER);
    expect(rulerOn(1 / 25.4)).toBe(metric);
    expect(rulerOn(0.5 / 25.4)).toBe(metric);
  });

  // 1 in = 2.54 cm, 1 yd = 0.9144 m exactly (NBS Circular 572 addendum, 1960).
  test.each([
    [INCH_RULER, '8½″', '2½″ × 4½″', '2⅝ yd', '8½', '8⅜″'],
    [metric, '21.59 cm', '6.35 × 11.43 cm', '2.4 m', '21.59', '21.3 cm'],
  ])('lengths, sizes, cloth and fields', (ruler, length, size, cloth, bare, about) => {
    expect(ruler.length(8.5)).toBe(length);
    expect(ruler.size(2.5, 4.5)).toBe(size);
    expect(ruler.cloth(2.625)).toBe(cloth);
    expect(ruler.bare(8.5)).toBe(bare);
    expect(ruler.about(8.4, 'near')).toBe(about);
  });

  test('steps are round marks of the ruler', () => {
    const centimetres = (inches: number) => metric.stepOf(inches) * 2.54;
    expect([1 / 16, 1 / 8, 1 / 4, 1 / 2, 1, 6].map(centimetres)).toEqual(
      [0.05, 0.5, 0.5, 1, 1, 6].map((n) => expect.closeTo(n, 9)),
    );
    expect(INCH_RULER.stepOf(1 / 16)).toBe(1 / 16);
  });
});

describe('areas in sums', () => {
  const pieces = given(200, 'of pieces', 'area');

  test('an area over a length is a length, a count of areas an area', () => {
    expect(over(pieces, given(40, 'usable width'))).toMatchObject({ value: 5, unit: 'inch' });
    expect(times(count(3, 'blocks'), pieces)).toMatchObject({ value: 600, unit: 'area' });
    expect(minus(pieces, pieces).unit).toBe('area');
    expect(plus(pieces, pieces).unit).toBe('area');
  });

  test('they are said in the ruler’s own squares: 1 sq in = 6.4516 sq cm', () => {
    expect(INCH_RULER.why(over(pieces, given(40, 'usable width')))).toBe(
      '5″ = 200 square inches of pieces ÷ 40 usable width',
    );
    expect(metric.traced(pieces)).toBe('1290.3 square centimetres');
    expect(metric.why(over(pieces, given(40, 'usable width')))).toBe(
      '12.7 cm = 1290.3 square centimetres of pieces ÷ 101.6 usable width',
    );
  });
});

test('a sum that has crossed to another thread is said as it was', () => {
  const yards = inYards(plus(given(30, 'of strips'), given(2, 'squaring up')));
  // 32 in = 81.28 cm.
  expect(metric.why(structuredClone(yards))).toBe('0.81 m = (76.2 of strips + 5.08 squaring up) ÷ 100 cm in a metre');
  expect(INCH_RULER.why(structuredClone(yards))).toContain('÷ 36 inches in a yard');
});
