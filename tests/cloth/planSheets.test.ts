import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Strip } from '../../src/shared/cloth/cloth.ts';
import { planSheets, type SheetPlan } from '../../src/shared/cloth/sheets/planSheets.ts';
import type { Sheet } from '../../src/shared/cloth/sheets/sheet.ts';
import type { Kind } from '../../src/shared/cloth/strips/kinds.ts';
import { planStrips } from '../../src/shared/cloth/strips/planStrips.ts';
import { setFabricSheet } from '../../src/shared/pattern/edits/index.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { writeBook } from '../../src/shared/writing/writeBook.ts';
import { demoPattern } from '../helpers/starters.ts';

const QUARTER: Sheet = { width: 18, height: 21 };
const EIGHTH: Sheet = { width: 9, height: 21 };

function squares(side: number, count: number): Kind {
  return { width: side, height: side, count, turns: true };
}

/** Everything asked for is cut, within the sheet, by cuts from edge to edge: first the strips, then across them. */
function expectSound(asked: readonly Kind[], sheet: Sheet, plan: SheetPlan): void {
  const cut = asked.map(() => 0);
  for (const { lengthwise, strips, times } of plan.sheets) {
    const [across, along] = lengthwise ? [sheet.height, sheet.width] : [sheet.width, sheet.height];
    expect(strips.reduce((sum, strip) => sum + strip.height * strip.times, 0)).toBeLessThanOrEqual(along + 1e-5);
    for (const strip of strips) {
      expect(strip.laid.reduce((sum, { lie, count }) => sum + lie.width * count, 0)).toBeLessThanOrEqual(across + 1e-5);
      for (const { lie, count } of strip.laid) {
        const kind = asked[lie.kind] as Kind;
        expect(lie.height).toBeLessThanOrEqual(strip.height + 1e-9);
        const asLies = lengthwise ? [lie.height, lie.width] : [lie.width, lie.height];
        const ways = [[kind.width, kind.height], ...(kind.turns ? [[kind.height, kind.width]] : [])];
        expect(ways).toContainEqual(asLies);
        cut[lie.kind] = (cut[lie.kind] as number) + count * strip.times * times;
      }
    }
  }
  expect(cut).toEqual(asked.map(({ count }) => count));
  expect(plan.count).toBe(plan.sheets.reduce((sum, { times }) => sum + times, 0));
  expect(plan.bound).toBeLessThanOrEqual(plan.count);
}

describe('sheets', () => {
  // Published list: squares from 18 × 21 usable by floor × floor (computed): 2:90, 2½:56, 3:42, 3½:30, 4:20, 4½:16, 5:12, 5½:9, 6:9, 6½:6.
  test.each([
    [2, 90],
    [2.5, 56],
    [3, 42],
    [3.5, 30],
    [4, 20],
    [4.5, 16],
    [5, 12],
    [5.5, 9],
    [6, 9],
    [6.5, 6],
  ])('a fat quarter gives squares of %d: %i', (side, many) => {
    expect(planSheets([squares(side, many)], QUARTER)).toMatchObject({ count: 1, proven: true });
    expect(planSheets([squares(side, many + 1)], QUARTER).count).toBe(2);
  });

  // Computed: 9 × 21 gives 3 × 8 squares of 2½.
  test('a fat eighth gives 24 squares of 2½', () => {
    expect(planSheets([squares(2.5, 24)], EIGHTH).count).toBe(1);
    expect(planSheets([squares(2.5, 25)], EIGHTH).count).toBe(2);
  });

  // Computed: a 5-inch square gives four squares of 2½, a 10-inch square sixteen.
  test.each([
    [5, 4],
    [10, 16],
  ])('a square of %i gives %i squares of 2½', (side, many) => {
    const sheet = { width: side, height: side };
    expect(planSheets([squares(2.5, many * 3)], sheet)).toMatchObject({ count: 3, bound: 3, proven: true });
  });

  // Computed: 17 × 20 leaves no room for a second, however they lie.
  test('large pieces take a sheet each, and fewer cannot do', () => {
    expect(planSheets([{ width: 17, height: 20, count: 5, turns: true }], QUARTER)).toMatchObject({
      count: 5,
      bound: 5,
    });
  });

  test('a directional piece is not turned', () => {
    const long = { width: 20, height: 4, count: 4 };
    expect(() => planSheets([{ ...long, turns: false }], QUARTER)).toThrow(RangeError);
    expect(planSheets([{ ...long, turns: true }], QUARTER).count).toBe(1);
  });

  test('of nothing are none', () => {
    expect(planSheets([], QUARTER)).toEqual({ sheets: [], count: 0, bound: 0, proven: true });
  });

  test('are sound whatever is asked, and never under the bound', () => {
    const eighths = (most: number) => fc.integer({ min: 8, max: most * 8 }).map((n) => n / 8);
    const kind = fc.record({
      width: eighths(18),
      height: eighths(18),
      count: fc.integer({ min: 1, max: 30 }),
      turns: fc.boolean(),
    });
    fc.assert(
      fc.property(fc.array(kind, { maxLength: 6 }), (asked) => {
        expectSound(asked, QUARTER, planSheets(asked, QUARTER));
      }),
      { numRuns: 120 },
    );
  });
});

describe('5,000 different pieces', () => {
  /** No two alike: from 1 inch to nearly 10 each way, by eighths. */
  const all = Array.from({ length: 5000 }, (_, i): Kind => {
    return { width: 1 + (i % 72) / 8, height: 1 + Math.floor(i / 72) / 8, count: 1, turns: true };
  });

  test('are cut from sheets, near to as few as can be', () => {
    const plan = planSheets(all, QUARTER);
    expectSound(all, QUARTER, plan);
    expect(plan.count / plan.bound).toBeLessThan(1.15);
  });

  test('are cut from strips across the cloth, near to as short as can be', () => {
    const plan = planStrips(all, 40);
    expect(plan.length / plan.bound).toBeLessThan(1.08);
    const cut = plan.strips.reduce(
      (sum, { laid, times }) => sum + times * laid.reduce((n, { count }) => n + count, 0),
      0,
    );
    expect(cut).toBe(5000);
  });
});

describe('a fabric bought in sheets', () => {
  const sheet = { name: 'fat quarter', width: 18, height: 21 };
  const demo = demoPattern();
  const [first] = demo.fabrics;
  if (first === undefined) throw new Error('no fabric');
  const pattern = setFabricSheet.apply(demo, { fabric: first.id, sheet });

  test('has its pieces cut from sheets, and only its strips and long pieces from yardage', () => {
    for (const { cloth } of workOut(pattern).sizes) {
      const need = cloth.needs.find(({ fabric }) => fabric === first.id);
      const laid = (strips: readonly Strip[]) =>
        strips.flatMap(({ pieces, times }) => pieces.map(({ letter, count }) => [letter, count * times] as const));
      const given = new Map<string, number>();
      for (const plan of need?.sheets?.plans ?? [])
        for (const [letter, n] of laid(plan.strips)) given.set(letter, (given.get(letter) ?? 0) + n * plan.times);
      for (const line of cloth.pieces.filter(({ fabric, cutAs }) => fabric === first.id && cutAs === 'piece'))
        expect([line.letter, given.get(line.letter)]).toEqual([line.letter, line.count.value]);
      expect(need?.sheets?.bound).toBeLessThanOrEqual(need?.sheets?.count.value ?? 0);
      const letters = need?.plan.strips.flatMap(({ pieces }) => pieces.map(({ letter }) => letter)) ?? [];
      for (const letter of letters) expect(given.has(letter)).toBe(false);
    }
  });

  test('is told in the book: how many to buy, and how each is cut', () => {
    const text = JSON.stringify(writeBook(workOut(pattern)));
    expect(text).toContain('fat quarter');
    expect(text).toContain('Sheet by sheet');
  });
});
