import { describe, expect, test } from 'vitest';
import type { PieceLine } from '../../src/shared/cloth/cloth.ts';
import { cuttingPlan } from '../../src/shared/cloth/cuttingPlan.ts';
import { widthsFor } from '../../src/shared/cloth/join.ts';
import { laidFor, tooWide } from '../../src/shared/cloth/planPieces.ts';
import { count, explain, given, times } from '../../src/shared/measure/traced.ts';
import type { House } from '../../src/shared/pattern/schema.ts';
import { demoPattern } from '../helpers/starters.ts';

const house: House = { ...demoPattern().house, seam: 0.25, step: 0.125, usableWidth: 40 };

function line(width: number, height: number, many: number, more: Partial<PieceLine> = {}): PieceLine {
  const sizes = { width: given(width, 'long'), height: given(height, 'wide'), count: count(many, 'strips') };
  return { letter: 'A', fabric: 'sea', ...sizes, spare: 0, use: [], cutAs: 'piece', ...more };
}

describe('what is laid on the cloth', () => {
  // Computed: two strips of 60½ are 121 inches; three joined widths reach 119, so a fourth strip gives the last 2½.
  test('a long border is whole widths and one short end', () => {
    const border = line(60.5, 3.5, 2, { cutAs: 'long-strip' });
    const joined = widthsFor(times(border.count, border.width), house);
    const laid = laidFor({ ...border, joined }, house);
    expect(laid).toMatchObject([
      { width: 40, height: 3.5, count: 3 },
      { width: 2.5, height: 3.5, count: 1 },
    ]);
    expect(explain(joined)).toBe(
      '4 = (2 strips × 60½ long − ½ lost in a join) ÷ (40 usable width − ½ lost in a join), up to the next 1',
    );
  });

  test('a border that fits is one strip, laid along', () => {
    expect(laidFor(line(36.5, 3.5, 2, { cutAs: 'long-strip' }), house)).toMatchObject([
      { width: 36.5, count: 2, turns: false },
    ]);
  });

  test('a long patch stands along the length of the cloth, unjoined', () => {
    const plan = cuttingPlan('sea', [line(50, 2.5, 8)], house);
    expect(plan).toMatchObject({ stripCount: 1, length: { value: 50 }, proven: true });
  });

  // Computed: 60 across from 40-inch cloth is 40 and, with a seam of ½ in all, 20½; both 70 along the cloth.
  test('a patch wider than the cloth both ways is panels, and is known to be too wide', () => {
    const wide = line(70, 60, 1);
    expect(tooWide(wide, house)).toBe(true);
    expect(laidFor(wide, house)).toMatchObject([
      { width: 40, height: 70, count: 1 },
      { width: 20.5, height: 70, count: 1 },
    ]);
    expect(tooWide(line(70, 40, 1), house)).toBe(false);
  });

  test('cloth narrower than its own seams does not run away', () => {
    const plan = cuttingPlan('sea', [line(70, 60, 3)], { ...house, usableWidth: 0.25 });
    expect(plan.stripCount).toBeLessThan(10);
  });
});
