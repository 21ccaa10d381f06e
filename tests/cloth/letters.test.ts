import { describe, expect, test } from 'vitest';
import type { LetteredSize } from '../../src/shared/cloth/letters.ts';
import { assignLetters, BINDING_KEY, borderKey, compareLetters, cutKey } from '../../src/shared/cloth/letters.ts';
import { given } from '../../src/shared/measure/traced.ts';
import type { Cut } from '../../src/shared/piecing/method.ts';
import { plainCut } from '../../src/shared/piecing/methods/plainCut.ts';
import { starter } from '../helpers/starters.ts';
import { patternOf } from './quilts.ts';

const pattern = patternOf(starter('nine-patch'));
const fabrics = { A: { sea: 'sea', sky: 'sky' } };

function cut(role: string, side: number): Cut {
  return { role, width: given(side, ''), height: given(side, ''), count: 1, patches: 1, use: 'square' };
}

/** One size of block A, each unit cut from one square of a role. */
function size(...units: readonly (readonly [role: string, side: number])[]): LetteredSize {
  const unfinished = { width: given(3, ''), height: given(3, '') };
  const sized = units.map(([role, side], index) => ({
    unit: { kind: 'plain', key: `unit ${index}`, width: 1, height: 1, role } as const,
    method: plainCut,
    others: [],
    plan: { cuts: [cut(role, side)], yield: 1, unfinished, trimmed: false, stages: [] },
    oversize: 0,
    perBlock: 1,
    perBlockOnSide: 0,
    reversed: 0,
    needed: 1,
    runs: [{ mirrored: false, needed: 1, before: 0 }],
  }));
  return { blocks: [{ id: 'A', grid: 1, count: 1, units: sized, unfinished }], quilt: { patches: [], triangles: [] } };
}

function lettersOf(...sizes: readonly LetteredSize[]): readonly (string | undefined)[] {
  const letters = assignLetters(pattern, sizes, fabrics);
  return [0, 1].map((unit) => letters[cutKey('A', `unit ${unit}`, 0)]);
}

describe('letters', () => {
  test('are shared by pieces of one fabric that are equal in every size', () => {
    expect(lettersOf(size(['sea', 3], ['sea', 3]), size(['sea', 4], ['sea', 4]))).toEqual(['A', 'A']);
  });

  test('are not shared when one size tells the pieces apart', () => {
    expect(lettersOf(size(['sea', 3], ['sea', 3]), size(['sea', 4], ['sea', 5]))).toEqual(['A', 'B']);
  });

  test('are not shared by two fabrics', () => {
    expect(lettersOf(size(['sea', 3], ['sky', 3]))).toEqual(['A', 'B']);
  });

  test('go on to borders, sides and ends apart, and to the binding', () => {
    const letters = assignLetters(pattern, [size(['sea', 3], ['sky', 3])], fabrics);
    const last = [borderKey('edge', 'sides'), borderKey('edge', 'ends'), BINDING_KEY].map((key) => letters[key]);
    expect(last).toEqual(['C', 'D', 'E']);
  });

  // Common practice: I and O are passed over, for beside a number they read as 1 and 0.
  test('pass over I and O and go on with two letters after Z', () => {
    const many = Array.from({ length: 30 }, (_, index) => ['sea', 1 + index / 8] as const);
    const letters = Object.values(assignLetters(pattern, [size(...many)], fabrics));
    expect(letters.slice(7, 9)).toEqual(['H', 'J']);
    expect(letters.slice(12, 14)).toEqual(['N', 'P']);
    expect(letters.slice(22, 28)).toEqual(['Y', 'Z', 'AA', 'AB', 'AC', 'AD']);
    expect([...letters].sort(compareLetters)).toEqual(letters);
  });
});
