import { describe, expect, it } from 'vitest';
import { cliffWords } from '../../../src/renderer/cloth/charts/WidthChart.tsx';
import type { Cliff } from '../../../src/shared/cloth/cliffs.ts';
import { INCH_RULER } from '../../../src/shared/measure/ruler.ts';
import { given } from '../../../src/shared/measure/traced.ts';

function cliff(yards: readonly number[], rest: Pick<Cliff, 'below' | 'yardsBelow'>): Cliff {
  const at = yards.map((value, i) => ({ width: 40 + i, strips: 4, length: 20, yards: given(value, '', 'yard') }));
  return { fabric: 'sand', at, ...rest };
}

describe('what is said of narrower cloth', () => {
  it('says how much more is bought below a width', () => {
    const words = cliffWords(cliff([1, 1, 0.875, 0.875, 0.5], { below: [42, 44], yardsBelow: [42, 44] }), INCH_RULER);
    expect(words).toEqual(['Below 42″: ⅛ yd more.', 'Below 44″: ⅜ yd more.']);
  });

  it('says when nothing is bought more, and when nothing changes at all', () => {
    expect(cliffWords(cliff([1, 1], { below: [41], yardsBelow: [] }), INCH_RULER)).toEqual([
      'More strips on narrower cloth, but the same yards.',
    ]);
    expect(cliffWords(cliff([1, 1], { below: [], yardsBelow: [] }), INCH_RULER)).toEqual(['The same at every width.']);
  });
});
