import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { folderForTests, run } from './run.ts';

const folder = folderForTests();
const published = join(import.meta.dirname, '../published/cutting');

function fileOf(data: unknown): string {
  const path = join(folder, 'problem.json');
  writeFileSync(path, typeof data === 'string' ? data : JSON.stringify(data));
  return path;
}

describe('plan', () => {
  test('answers every published problem of a file, both ways, at its least height', async () => {
    const file = join(published, 'level-ngcut.json');
    const { code, said } = await run('plan', file, '--json', '--seconds', '60');
    expect(code).toBe(0);
    const answers: { name: string; way: 'fixed' | 'turned' }[] = JSON.parse(said);
    const problems: { name: string; minimumHeight: Record<string, number> }[] = JSON.parse(readFileSync(file, 'utf8'));
    expect(answers).toHaveLength(problems.length * 2);
    for (const answer of answers) {
      const least = problems.find(({ name }) => name === answer.name)?.minimumHeight[answer.way];
      expect(answer, `${answer.name}, ${answer.way}`).toMatchObject({ proven: least, bound: least, optimal: true });
    }
  });

  // Computed: 14 lengths of 3 from stock of 10 go three to a stock, so five stocks.
  test('answers one problem of stock, and says so in a table', async () => {
    const file = fileOf({ name: 'Bars', length: 10, items: [{ l: 3, demand: 14 }] });
    const [answer] = JSON.parse((await run('plan', file, '--json')).said);
    expect(answer).toMatchObject({ name: 'Bars', way: 'stock', live: 5, proven: 5, bound: 5, optimal: true });
    const pieces: { times: number; pieces: { count: number }[] }[] = answer.plan;
    expect(pieces.reduce((sum, { times, pieces: [one] }) => sum + times * (one?.count ?? 0), 0)).toBe(14);
    expect((await run('plan', file)).said).toMatch(/Bars +stock +5 +5 +5 +less cannot do/);
  });

  test('turns pieces only where the problem says so', async () => {
    const items = [{ w: 4, h: 10 }];
    const answers = async (data: object) => JSON.parse((await run('plan', fileOf(data), '--json')).said);
    expect(await answers({ width: 10, items, turns: false })).toMatchObject([{ way: 'fixed', proven: 10 }]);
    expect(await answers({ width: 10, items, turns: true })).toMatchObject([{ way: 'turned', proven: 4 }]);
  });

  test.each([
    ['an entry that is missing', { width: 10, items: [{ w: 4 }] }, /line 1: items\[0\]\.h is missing/],
    [
      'a piece wider than the cloth',
      { width: 10, items: [{ w: 14, h: 2 }] },
      /a piece of 14 × 2 does not fit cloth 10 wide unless it is turned/,
    ],
    ['no JSON', 'width: 10', /This is not JSON/],
    ['nothing to cut', { width: 10, items: [] }, /items must not be empty/],
  ])('refuses %s in one message', async (_, data, words) => {
    const { code, said, complained } = await run('plan', fileOf(data));
    expect({ code, said }).toEqual({ code: 2, said: '' });
    expect(complained).toMatch(words);
  });

  test('refuses a time that is none', async () => {
    expect(await run('plan', fileOf({ length: 10, items: [{ l: 3 }] }), '--seconds', 'soon')).toMatchObject({
      code: 2,
    });
  });
});
