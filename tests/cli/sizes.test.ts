import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { DEMO, folderForTests, run } from './run.ts';

const folder = folderForTests();
const own = join(folder, 'own.mattresses.json');
writeFileSync(
  own,
  JSON.stringify({
    format: 'piecewright-mattresses',
    version: 1,
    name: 'Boats',
    source: 'Our own measure',
    mattresses: [{ id: 'bunk', name: 'Bunk', width: 26, length: 74 }],
  }),
);

describe('sizes', () => {
  test('ranks sizes for two numbers and a drop, each with its reasons', async () => {
    const { code, said } = await run('sizes', DEMO, '--target', '60x80', '--drop', '12');
    expect(code).toBe(0);
    expect(said).toContain('84″ = 60 mattress + 2 × 12 drop');
    expect(said).toContain('92″ = 80 mattress + 12 drop');
    expect(said).toMatch(/1\. .* blocks of .* in all\n {4}[+−] {2}It is/);
  });

  test('as JSON tells the target with its sum and every size with its numbers', async () => {
    const { said } = await run('sizes', DEMO, '--target', '60x80', '--drop', '12', '--most', '3', '--json');
    const { target, sizes, met } = JSON.parse(said);
    expect(target.width).toMatchObject({ value: 84, sum: '84″ = 60 mattress + 2 × 12 drop' });
    expect(met).toBe(true);
    expect(sizes).toHaveLength(3);
    for (const { across, finished, off, reasons } of sizes) {
      expect(Number.isInteger(across)).toBe(true);
      expect(finished.width.value).toBeCloseTo(84 + off.width, 9);
      expect(reasons.length).toBeGreaterThan(2);
    }
  });

  test('knows mattresses by name, and the designer’s own', async () => {
    const queen = await run('sizes', DEMO, '--bed', 'Queen', '--drop', '10', '--tuck', '6', '--json');
    expect(JSON.parse(queen.said).target.height.value).toBe(96);
    const bunk = await run('sizes', DEMO, '--bed', 'bunk', '--beds', own, '--json');
    expect(JSON.parse(bunk.said).target.width.value).toBe(26);
  });

  test('a target in centimetres is taken as such', async () => {
    const { said } = await run('sizes', DEMO, '--target', '127x152.4cm', '--json');
    const { target } = JSON.parse(said);
    expect([target.width.value, target.height.value]).toEqual([50, 60]);
  });

  test('a target that cannot be met ends with 1 and says the nearest', async () => {
    const { code, said } = await run('sizes', DEMO, '--target', '4x4');
    expect(code).toBe(1);
    expect(said).toContain('No size of this design comes near 4″ × 4″: the nearest is');
  });

  test.each([
    [['--target', 'large'], '--target must be a width and a height'],
    [['--target', '60x'], '--target must be a length'],
    [['--target', '60x80', '--drop', '-3'], '--drop must be a length'],
    [['--target', '60x900'], 'from 1″ to 400″'],
    [['--target', '60x80', '--most', '0'], '--most must be a whole number'],
    [['--bed', 'hammock'], 'There is no mattress “hammock”. There are: crib (28 × 52)'],
    [[], 'Say either --target'],
    [['--bed', 'queen', '--target', '60x80'], 'Say either --target'],
    [['--bed', 'bunk', '--beds', DEMO], 'format must be'],
  ])('%j is refused with one clear message', async (words, message) => {
    const { code, said, complained } = await run('sizes', DEMO, ...words);
    expect([code, said]).toEqual([2, '']);
    expect(complained).toContain(message);
    expect(complained.split('\n')).toHaveLength(1);
  });
});
