import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { onRuler } from '../../src/shared/measure/inches.ts';
import { INCH_RULER } from '../../src/shared/measure/ruler.ts';
import { addSpacer, setBorderWidth, setSizeBlocks } from '../../src/shared/pattern/edits/index.ts';
import type { Pattern } from '../../src/shared/pattern/schema.ts';
import { closeBorder } from '../../src/shared/quilt/find/closeBorder.ts';
import { closingsOf } from '../../src/shared/quilt/find/closingsOf.ts';
import { closingWords } from '../../src/shared/quilt/find/closingWords.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { testPattern } from '../helpers/fixtures.ts';

const STEP = 1 / 8;
const marks = (least: number, most: number) => fc.integer({ min: least * 8, max: most * 8 }).map((n) => n / 8);
const toClose = fc.record({
  inside: fc.record({ width: marks(8, 100), height: marks(8, 110) }),
  width: marks(1, 8),
  aspect: fc.constantFrom(0.5, 1, 2, 3),
  high: fc.constantFrom(1, 2, 3, 4, 8),
  step: fc.constant(STEP),
});

/** Whole units, to a hundred-thousandth of an inch. */
function whole(side: number, unit: number): number {
  return Math.abs(side - Math.round(side / unit) * unit);
}

describe('ways of making a pieced border close', () => {
  test('spacers always close, lie on the ruler, and can be sewn', () => {
    fc.assert(
      fc.property(toClose, (asked) => {
        for (const { width, sides, ends, across, down } of closeBorder(asked).spacers) {
          const unit = width * asked.aspect;
          expect(across * unit).toBeCloseTo(asked.inside.width + 2 * sides, 6);
          expect(down * unit).toBeCloseTo(asked.inside.height + 2 * ends, 6);
          for (const spacer of [sides, ends]) {
            expect(onRuler(spacer, STEP)).toBe(true);
            expect(spacer === 0 || spacer >= 0.5).toBe(true);
          }
        }
      }),
    );
  });

  test('unit sizes close all four sides at once', () => {
    fc.assert(
      fc.property(toClose, (asked) => {
        for (const { length, width, across, down, friendly } of closeBorder(asked).units) {
          expect(across * length).toBeCloseTo(asked.inside.width, 6);
          expect(down * length).toBeCloseTo(asked.inside.height, 6);
          expect(width * asked.aspect).toBeCloseTo(length, 9);
          expect(friendly).toBe(onRuler(width / asked.high, STEP));
        }
      }),
    );
  });

  test('a change of what is inside closes it too, and the first is the smallest', () => {
    fc.assert(
      fc.property(toClose, (asked) => {
        const { changes, closes } = closeBorder(asked);
        const unit = asked.width * asked.aspect;
        for (const { wider, higher } of changes) {
          expect(whole(asked.inside.width + wider, unit)).toBeLessThan(1e-5);
          expect(whole(asked.inside.height + higher, unit)).toBeLessThan(1e-5);
        }
        const amounts = changes.map(({ wider, higher }) => Math.abs(wider) + Math.abs(higher));
        expect(amounts).toEqual([...amounts].sort((a, b) => a - b));
        if (!closes) expect(changes.length).toBeGreaterThan(0);
      }),
    );
  });

  // Computed: 36 and 48 are both whole numbers of 3, 4, 6 and 12.
  test('a top of 36 × 48 takes units of 4, or of 3 and 6, with nothing between', () => {
    const { closes, units } = closeBorder({
      inside: { width: 36, height: 48 },
      width: 4,
      aspect: 1,
      high: 2,
      step: STEP,
    });
    expect(closes).toBe(true);
    expect(units.slice(0, 3).map(({ width, across, down }) => [width, across, down])).toEqual([
      [4, 9, 12],
      [3, 12, 16],
      [6, 6, 8],
    ]);
  });

  // Computed: units of 3 along 40 and 52: 42 and 54 take strips of 1 on every side.
  test('a top of 40 × 52 takes strips of one inch all round for units of 3', () => {
    const [first] = closeBorder({
      inside: { width: 40, height: 52 },
      width: 3,
      aspect: 1,
      high: 2,
      step: STEP,
    }).spacers;
    expect(first).toMatchObject({ width: 3, sides: 1, ends: 1, across: 14, down: 18 });
    expect(closingWords(first as never, INCH_RULER.length)).toBe(
      'Put plain strips of 1″ inside it: 14 units along the top and 18 along the sides of 3″.',
    );
  });
});

describe('a pieced border of a pattern', () => {
  const base = testPattern('harbour-wall');
  const lap = base.sizes.filter(({ id }) => id === 'lap');
  const borders = base.borders.filter(({ id }) => id === 'inner' || id === 'geese');
  const only: Pattern = { ...base, borders, sizes: lap.map((size) => ({ ...size, borders: {} })) };

  test('that does not close says by how much and what would make it close', () => {
    const wide = setBorderWidth.apply(only, { border: 'inner', width: 2.5 });
    const findings = workOut(wide).findings.filter(({ level }) => level === 'stops');
    expect(findings.map(({ where, by }) => [where.path, where.size, by])).toEqual([['borders[1]', 'Lap', 1]]);
    expect(findings[0]?.what).toContain('Geese is 1″ short');
    expect(findings[0]?.mend).toContain('inside it');
  });

  test('closes with the strips that are proposed, whatever the top inside it is', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 6 }),
        fc.integer({ min: 1, max: 6 }),
        marks(0.5, 5),
        (across, down, width) => {
          const sized = setSizeBlocks.apply(only, { size: 'lap', across, down });
          const pattern = setBorderWidth.apply(sized, { border: 'inner', width });
          const [laid] = workOut(pattern).sizes;
          const closings = laid === undefined ? null : closingsOf(laid.quilt, 'geese', pattern.house);
          for (const spacer of closings?.spacers ?? []) {
            const own = {
              ...pattern,
              borders: pattern.borders.map((one) => (one.id === 'geese' ? { ...one, width: spacer.width } : one)),
            };
            const widths = { lap: { sides: spacer.sides, ends: spacer.ends } };
            const mended = addSpacer.apply(own, { border: 'geese', fabric: 'sand', widths });
            const { findings, sizes } = workOut(mended);
            expect(sizes).toHaveLength(1);
            const ofBorders = findings.filter(({ by, where }) => by !== undefined && where.path.startsWith('borders'));
            expect(ofBorders).toEqual([]);
          }
        },
      ),
      { numRuns: 25 },
    );
  });

  test('a unit longer than the side is refused with the place and the measure', () => {
    const long = setBorderWidth.apply(only, { border: 'geese', width: 45 });
    const { findings, sizes } = workOut(long);
    expect(sizes).toEqual([]);
    const stops = findings.filter(({ level }) => level !== 'note');
    expect(stops.map(({ what, where }) => [what, where.path])).toEqual([
      ['One unit of Geese is 45″ long; a side of Lap is only 40″.', 'borders[1]'],
    ]);
  });

  test('a block needed in two sizes is refused: it would be two blocks', () => {
    const units = only.borders.map((one) => (one.id === 'geese' ? { ...one, pieced: { units: 'A' } } : one));
    const { findings } = workOut({ ...only, borders: units });
    const stops = findings.filter(({ level }) => level !== 'note');
    expect(stops.map(({ what }) => what)).toEqual(['Block A is needed at 12″ × 12″ and at 4″ × 4″ in Lap.']);
  });
});
