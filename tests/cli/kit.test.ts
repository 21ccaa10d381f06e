import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readCsv } from './readCsv.ts';
import { DEMO, folderForTests, run } from './run.ts';

const folder = folderForTests();

describe('kit', () => {
  test('writes the sheet for each paper and as a table', async () => {
    const out = join(folder, 'kits');
    const { code, complained } = await run('kit', DEMO, '--out', out, '--kits', '8', '--size', 'lap');
    expect({ code, complained }).toEqual({ code: 0, complained: '' });
    expect(readdirSync(out).sort()).toEqual([
      'harbour-lights-lap-8-kits-a4.pdf',
      'harbour-lights-lap-8-kits-letter.pdf',
      'harbour-lights-lap-8-kits.csv',
    ]);
    const rows = readCsv(readFileSync(join(out, 'harbour-lights-lap-8-kits.csv'), 'utf8'));
    expect(rows.map(({ Kits }) => Kits)).toEqual(rows.map(() => '8'));
  });

  test('says what it wants of the number of kits', async () => {
    for (const kits of ['0', '2.5', 'many', '1001']) {
      const { code, complained } = await run('kit', DEMO, '--out', folder, '--kits', kits);
      expect([code, complained]).toEqual([2, expect.stringContaining('a whole number of kits from 1 to 1000')]);
    }
  });
});
