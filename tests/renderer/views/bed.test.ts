import { expect, test } from 'vitest';
import { bedWords, suiting } from '../../../src/renderer/quilt/bed/BedOver.tsx';
import { INCH_RULER } from '../../../src/shared/measure/ruler.ts';
import { given } from '../../../src/shared/measure/traced.ts';
import type { Quilt } from '../../../src/shared/quilt/quilt.ts';

// Widths and lengths from the table of mattresses that comes with the studio (resources/mattresses).
const crib = { id: 'crib', name: 'Crib', width: 28, length: 52 };
const twin = { id: 'twin', name: 'Twin', width: 39, length: 75 };
const queen = { id: 'queen', name: 'Queen', width: 60, length: 80 };
const king = { id: 'king', name: 'King', width: 76, length: 80 };
const all = [crib, twin, queen, king];

function quilt(width: number, height: number): Quilt {
  return { finished: { width: given(width, ''), height: given(height, '') } } as Quilt;
}

test('a quilt is laid on the bed it hangs over by about a foot', () => {
  expect(suiting(quilt(84, 92), all)).toBe(queen);
  expect(suiting(quilt(100, 92), all)).toBe(king);
  expect(suiting(quilt(60, 90), all)).toBe(twin);
});

test('a quilt too small for any bed is laid on the smallest, and the words say so', () => {
  expect(suiting(quilt(20, 30), all)).toBe(crib);
  expect(bedWords(quilt(20, 30), crib, INCH_RULER)).toBe('Too small for Crib');
  expect(bedWords(quilt(84, 92), queen, INCH_RULER)).toBe('On Queen: 12″ over the sides, 12″ at the foot');
});
