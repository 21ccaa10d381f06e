import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { DEMO, folderForTests, run } from './run.ts';

const folder = folderForTests();

describe('the figures of a pattern', () => {
  test('are written as SVG files, named by where they stand', async () => {
    const out = join(folder, 'figures');
    const ran = await run('figures', DEMO, '--out', out);
    expect(ran.code).toBe(0);
    const files = readdirSync(out).sort();
    expect(ran.said.split('\n')).toHaveLength(files.length);
    expect(files).toEqual(expect.arrayContaining(['cover.svg', 'colouring.svg', 'quilt-01.svg', 'step-01.svg']));
    for (const file of files) {
      const svg = readFileSync(join(out, file), 'utf8');
      expect(svg).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" width="[\d.]+" height="[\d.]+" viewBox="/u);
      const [, width = 0, height = 0] = (/width="([\d.]+)" height="([\d.]+)"/u.exec(svg) ?? []).map(Number);
      // Six by eight inches at the most, and the margin of the lines.
      expect(width).toBeLessThanOrEqual(6 * 72 + 8);
      expect(height).toBeLessThanOrEqual(8 * 72 + 8);
    }
  });

  test('have no colour in black and white', async () => {
    const out = join(folder, 'plain');
    expect((await run('figures', DEMO, '--out', out, '--plain-ink')).code).toBe(0);
    const colours = readFileSync(join(out, 'cover.svg'), 'utf8').match(/#[0-9a-f]{6}/gu) ?? [];
    expect(colours.length).toBeGreaterThan(0);
    for (const colour of colours) {
      const [red, green, blue] = [1, 3, 5].map((at) => colour.slice(at, at + 2));
      expect([green, blue]).toEqual([red, red]);
    }
  });

  test('of a pattern that does not fit are not written', async () => {
    const file = join(import.meta.dirname, '../fixtures/patterns/five-fathom.pattern.json');
    const out = join(folder, 'unfit');
    const ran = await run('figures', file, '--out', out, '--json');
    expect(ran).toMatchObject({ code: 1, said: '' });
    expect(ran.complained).toMatch(/Nothing was written\.$/u);
  });
});
