import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { demoPattern } from '../helpers/starters.ts';
import { readCsv } from './readCsv.ts';
import { DEMO, folderForTests, run } from './run.ts';

const folder = folderForTests();

function isPdf(path: string): boolean {
  const bytes = readFileSync(path);
  return bytes.subarray(0, 5).toString() === '%PDF-' && bytes.subarray(-6).toString().trim() === '%%EOF';
}

describe('publish', () => {
  test('makes the folder and writes a PDF for each paper and the charts, and says their names', async () => {
    const out = join(folder, 'new', 'folder');
    const { code, said, complained } = await run('publish', DEMO, '--out', out);
    expect({ code, complained }).toEqual({ code: 0, complained: '' });
    const names = readdirSync(out).sort();
    expect(names).toEqual([
      'harbour-lights-edition-1-a4.pdf',
      'harbour-lights-edition-1-cutting.csv',
      'harbour-lights-edition-1-fabric.csv',
      'harbour-lights-edition-1-letter.pdf',
      'harbour-lights-edition-1-strips.csv',
    ]);
    expect(said.split('\n').sort()).toEqual(names.map((name) => join(out, name)));
    for (const name of names.filter((one) => one.endsWith('.pdf'))) expect(isPdf(join(out, name))).toBe(true);
  });

  test('the charts hold the core’s numbers', async () => {
    const out = join(folder, 'charts');
    await run('publish', DEMO, '--out', out, '--paper', 'a4');
    const chart = (ending: string) =>
      readCsv(readFileSync(join(out, `harbour-lights-edition-1-${ending}.csv`), 'utf8'));
    const { sizes } = workOut(demoPattern());
    const pieces = sizes.flatMap(({ size, cloth }) =>
      cloth.pieces.map(({ letter, count, width }) => [size.name, letter, String(count.value), String(width.value)]),
    );
    expect(chart('cutting').map((row) => [row.Size, row.Letter, row.Cut, row['Width, inches']])).toEqual(pieces);
    const yards = sizes.flatMap(({ cloth }) => [...cloth.needs, cloth.backing].map((need) => String(need.yards.value)));
    const told = chart('fabric').map((row) => row.Yards);
    expect(told.filter((text) => text !== '')).toEqual(yards);
    const strips = sizes.flatMap(({ cloth }) => cloth.needs.flatMap(({ plan }) => plan.strips));
    expect(chart('strips')).toHaveLength(strips.reduce((sum, strip) => sum + strip.pieces.length, 0));
  });

  test('an edition of one size is named by it and knows no other', async () => {
    const out = join(folder, 'one');
    const { said } = await run(
      'publish',
      DEMO,
      '--out',
      out,
      '--paper',
      'letter',
      '--size',
      'lap',
      '--plain-ink',
      '--json',
    );
    const { written } = JSON.parse(said);
    expect(written[0]).toBe(join(out, 'harbour-lights-lap-edition-1-letter-black-and-white.pdf'));
    const rows = readCsv(readFileSync(join(out, 'harbour-lights-lap-edition-1-cutting.csv'), 'utf8'));
    expect(new Set(rows.map((row) => row.Size))).toEqual(new Set(['Lap']));
  });

  test('a size that fits can be published of a pattern that does not', async () => {
    const path = join(folder, 'wide.pattern.json');
    writeFileSync(path, readFileSync(DEMO, 'utf8').replace('"block": 10', '"block": 9.7'));
    const out = join(folder, 'partly');
    expect((await run('publish', path, '--out', out)).code).toBe(1);
    expect(existsSync(out)).toBe(false);
    expect((await run('publish', path, '--out', out, '--paper', 'a4', '--size', 'Cot')).code).toBe(0);
    const draft = await run('publish', path, '--out', out, '--paper', 'a4', '--draft');
    expect(draft.code).toBe(0);
    expect(draft.complained).toMatch(/too short/);
    expect(readdirSync(out)).toContain('harbour-lights-edition-1-a4-draft.pdf');
  });

  test('words that look like a sum stay words in a spreadsheet', async () => {
    const path = join(folder, 'sums.pattern.json');
    writeFileSync(
      path,
      readFileSync(DEMO, 'utf8').replace('"name": "Lamplight",\n      "value"', '"name": "=1+1",\n      "value"'),
    );
    const out = join(folder, 'sums');
    expect((await run('publish', path, '--out', out, '--paper', 'a4')).code).toBe(0);
    const text = readFileSync(join(out, 'harbour-lights-edition-1-cutting.csv'), 'utf8');
    expect(text).toContain(",'=1+1,");
  });

  test('the same file gives the same bytes, over what was there before', async () => {
    const out = join(folder, 'again');
    mkdirSync(out);
    const path = join(out, 'harbour-lights-edition-1-a4.pdf');
    writeFileSync(path, 'an older one');
    await run('publish', DEMO, '--out', out, '--paper', 'a4');
    const first = readFileSync(path);
    await run('publish', DEMO, '--out', out, '--paper', 'a4');
    expect(readFileSync(path).equals(first)).toBe(true);
    expect(readdirSync(out).filter((name) => name.startsWith('.'))).toEqual([]);
  });
});

describe('demo', () => {
  test('makes PDFs on both papers and in plain ink, charts, findings, and says what it made', async () => {
    const out = join(folder, 'demo-output');
    const { code, said } = await run('demo', '--out', out);
    expect(code).toBe(0);
    const names = readdirSync(out).sort();
    expect(names.filter((name) => name.endsWith('.pdf'))).toEqual([
      'harbour-lights-edition-1-a4.pdf',
      'harbour-lights-edition-1-letter-black-and-white.pdf',
      'harbour-lights-edition-1-letter.pdf',
      'winter-nets-edition-1-a4.pdf',
      'winter-nets-edition-1-letter-black-and-white.pdf',
      'winter-nets-edition-1-letter.pdf',
    ]);
    for (const name of names) expect(said).toContain(name);
    expect(JSON.parse(readFileSync(join(out, 'findings.json'), 'utf8'))).toMatchObject({ fits: true, findings: [] });
    expect(readFileSync(join(out, 'findings.txt'), 'utf8')).toContain('Fits in all 3 sizes.');
  });
});
