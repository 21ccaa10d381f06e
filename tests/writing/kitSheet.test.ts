import { describe, expect, it } from 'vitest';
import { fractionOf } from '../../src/shared/measure/fraction.ts';
import { setBundle } from '../../src/shared/pattern/edits/index.ts';
import { kitIn } from '../../src/shared/workroom/clothWays.ts';
import type { WorkedSize } from '../../src/shared/workroom/workedOut.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { kitCsv } from '../../src/shared/writing/kitCsv.ts';
import { kitFileName, writeKitSheet } from '../../src/shared/writing/kitSheet.ts';
import { testPattern } from '../helpers/fixtures.ts';
import { demoPattern } from '../helpers/starters.ts';
import { textOf } from './said.ts';

const worked = workOut(demoPattern());
const lap = worked.sizes[1] as WorkedSize;

describe('the kit sheet as a table', () => {
  const lines = kitCsv(kitIn(worked, lap, 12), worked.pattern, 'Lap')
    .trimEnd()
    .split('\r\n');

  it('has a row for every fabric and the backing, the longest cut first, each as long as the head', () => {
    expect(lines).toHaveLength(1 + lap.cloth.needs.length + 1);
    expect(lines[1]).toContain('backing (Lap)');
    // 12 × 5 yards, and 2 inches of squaring up: 60 1/18, up to the next eighth (the house's rule).
    expect(lines[1]).toContain('60⅛ yd');
  });

  it('has a name without anything a file system minds', () => {
    expect(kitFileName(worked.pattern, 'Grand Lit / 2', 3)).toBe('harbour-lights-grand-lit-2-3-kits');
  });
});

describe('the kit sheet as it is printed', () => {
  const book = writeKitSheet(worked, lap, 12);
  const text = textOf(book, 'kit');

  it('has every bolt cut in its order, and what lies in a kit', () => {
    expect(text).toContain('1  Foam | backing | 5 yd | 12 | 60⅛ yd');
    for (const { fabric, yards } of lap.cloth.needs) {
      const name = worked.pattern.fabrics.find(({ id }) => id === fabric)?.name ?? '';
      expect(text).toContain(`${fractionOf(yards.value)} yd ${name}, for `);
    }
    expect(text).toContain('The pattern “Harbour Lights”, edition 1');
  });

  it('counts out sheets and bundles, and says squares of squares', () => {
    const squares = setBundle.apply(testPattern('six-lamps'), {
      strip: 10,
      length: 10,
      values: { light: 40, medium: 0, dark: 40 },
    });
    const small = workOut(squares);
    const own = small.sizes.find(({ bundle }) => (bundle?.bundles ?? 0) > 0);
    if (own === undefined) throw new Error('no size is cut from squares');
    const counted = textOf(writeKitSheet(small, own, 12), 'kit');
    expect(counted).toMatch(/bundles? of squares/);
    expect(counted).not.toContain('of strips');
  });
});
