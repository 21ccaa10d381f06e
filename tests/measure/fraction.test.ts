import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fractionOf, mixedOf } from '../../src/shared/measure/fraction.ts';
import { same, toRuler } from '../../src/shared/measure/inches.ts';

describe('numbers as a maker reads them', () => {
  test.each([
    [2.5, '2½'],
    [0.375, '⅜'],
    [3.8125, '3 13⁄16'],
    [0.3125, '5⁄16'],
    [12, '12'],
    [0, '0'],
    [-0.375, '−⅜'],
    [2.4, '2.4'],
    [1 / 3, '⅓'],
    [8 + 2 / 3, '8⅔'],
  ])('%d is written %s', (value, text) => {
    expect(fractionOf(value)).toBe(text);
  });

  test('every sixty-fourth comes back as the number it was', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 20000 }), (parts) => {
        const mixed = mixedOf(parts / 64);
        expect(mixed).not.toBeNull();
        expect((mixed?.whole ?? 0) + (mixed?.top ?? 0) / (mixed?.bottom ?? 1)).toBe(parts / 64);
      }),
    );
  });
});

describe('taking a length to the ruler', () => {
  const steps = fc.constantFrom(1 / 4, 1 / 8, 1 / 16, 1 / 25.4);
  const lengths = fc.double({ min: 0.01, max: 400, noNaN: true });

  test('up is never below, down never above, both within a step, and a mark stays where it is', () => {
    fc.assert(
      fc.property(lengths, steps, (length, step) => {
        const up = toRuler(length, step, 'up');
        const down = toRuler(length, step, 'down');
        expect(up).toBeGreaterThan(length - 1e-4);
        expect(down).toBeLessThan(length + 1e-4);
        expect(up - down).toBeLessThan(step + 1e-9);
        expect(same(toRuler(up, step, 'up'), up)).toBe(true);
      }),
    );
  });
});
