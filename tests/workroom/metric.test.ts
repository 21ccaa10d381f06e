import { describe, expect, test } from 'vitest';
import { chartFiles } from '../../src/main/cli/charts.ts';
import { jsonText } from '../../src/main/cli/json.ts';
import { inchesText, yardsText } from '../../src/shared/measure/fraction.ts';
import { CENTIMETRE, METRE } from '../../src/shared/measure/metric.ts';
import { explain } from '../../src/shared/measure/traced.ts';
import { setRuler } from '../../src/shared/pattern/edits/index.ts';
import { rulerChange } from '../../src/shared/workroom/rulerChange.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { writeBook } from '../../src/shared/writing/writeBook.ts';
import { demoPattern } from '../helpers/starters.ts';

const demo = demoPattern();
const metric = setRuler.apply(demo, rulerChange(demo, workOut(demo).blocks, 'centimetres'));
const worked = workOut(metric);

/** Every text of a thing: words, letters of figures, and the ways numbers are shown; numbers themselves are kept in inches. */
function textsOf(part: unknown): string[] {
  if (typeof part === 'string') return [part];
  if (Array.isArray(part)) return part.flatMap(textsOf);
  if (typeof part !== 'object' || part === null || 'how' in part) return [];
  return Object.values(part).flatMap(textsOf);
}

describe('a house with a metric ruler', () => {
  test('every quilt of the demo is found on it: nothing falls between its marks', () => {
    expect(worked.findings).toEqual([]);
    // The nearest widths to 9, 10 and 12 inches (22.9, 25.4, 30.5 cm) whose eighths are half centimetres.
    expect(metric.sizes.map(({ block }) => Math.round((block / CENTIMETRE) * 100) / 100)).toEqual([24, 24, 32]);
  });

  // By hand, with seams of 0.75 cm (common practice): a finished 24 is 25.5 with its seams; a plain patch of 3 by 12 is cut
  // 4.5 × 13.5. Half-square triangles of 6 need 6 + 0.75 × (2 + √2) = 8.56, on the next millimetre 8.6.
  test('cuts whole millimetres', () => {
    const [cot] = worked.sizes;
    expect(cot?.blocks[0]?.unfinished.width.value).toBeCloseTo(25.5 * CENTIMETRE, 9);
    const sizes = cot?.cloth.pieces.map(({ width, height }) => [width.value / CENTIMETRE, height.value / CENTIMETRE]);
    const has = (wide: number, high: number) =>
      sizes?.some(([w = 0, h = 0]) => Math.abs(w - wide) < 1e-6 && Math.abs(h - high) < 1e-6);
    expect(has(13.5, 4.5)).toBe(true);
    expect(has(8.6, 8.6)).toBe(true);
    for (const [w = 0, h = 0] of sizes ?? []) {
      expect(Math.abs(w * 10 - Math.round(w * 10))).toBeLessThan(1e-6);
      expect(Math.abs(h * 10 - Math.round(h * 10))).toBeLessThan(1e-6);
    }
  });

  test('buys cloth by the tenth of a metre, and says the sum', () => {
    for (const { cloth } of worked.sizes) {
      for (const { yards } of cloth.needs) {
        const tenths = (yards.value / METRE) * 10;
        expect(Math.abs(tenths - Math.round(tenths))).toBeLessThan(1e-6);
      }
    }
    const [need] = worked.sizes[0]?.cloth.needs ?? [];
    if (need === undefined) throw new Error('the cot takes cloth');
    expect(explain(need.yards, 'centimetres')).toMatch(/^[\d.]+ m = .* ÷ 100 cm in a metre, up to the next 0\.1$/);
  });

  test('prints a book without an inch or a yard in it', () => {
    const texts = textsOf(writeBook(worked).sections);
    expect(texts.filter((text) => /″|\binch|\byd\b|\byard/.test(text))).toEqual([]);
    expect(texts).not.toContain('yards');
    expect(texts).toContain('metres');
    expect(texts).not.toContain('length');
    expect(texts).toContain('centimetres');
  });

  test('gives charts in centimetres and metres', () => {
    for (const [name, text] of chartFiles(worked)) expect(text, name).not.toMatch(/inch|″| yd|Yards/);
    expect(jsonText(worked.sizes[0]?.quilt.finished, 'centimetres')).not.toContain('″');
  });

  test('and a house that goes back to inches is said in inches again', () => {
    const back = setRuler.apply(metric, { units: 'inches' });
    expect(back.house).toEqual(demo.house);
    expect(textsOf(writeBook(workOut(back)).sections).join(' ')).not.toMatch(/\bcm\b/);
  });
});

test('lengths and cloth as a maker reads them', () => {
  // 1 in = 2.54 cm and 1 yd = 0.9144 m exactly (NBS Circular 572 addendum, 1960).
  expect(inchesText(10 / 2.54, 'centimetres')).toBe('10 cm');
  expect(inchesText(0.75 / 2.54, 'centimetres')).toBe('0.75 cm');
  expect(inchesText(-1.25 / 2.54, 'centimetres')).toBe('−1.25 cm');
  expect(yardsText(1 / 0.9144, 'centimetres')).toBe('1 m');
  expect(yardsText(2.4 / 0.9144, 'centimetres')).toBe('2.4 m');
});
