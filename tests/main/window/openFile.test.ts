import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { importFrom } from '../../../src/main/window/openFile.ts';
import type { FileText } from '../../../src/shared/contract.ts';

const folder = mkdtempSync(join(tmpdir(), 'piecewright-open-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** What the service is given for a file. */
async function given(path: string): Promise<FileText | undefined> {
  let file: FileText | undefined;
  const service = {
    importFile: async (one: FileText) => {
      file = one;
      return { kind: 'pattern', id: 'x' } as const;
    },
  };
  await importFrom(path, service);
  return file;
}

describe('a file opened from the desktop', () => {
  it('brings the recipe files beside it that it names, and reaches no further', async () => {
    mkdirSync(join(folder, 'in'));
    writeFileSync(join(folder, 'outside.recipe.json'), 'outside');
    writeFileSync(join(folder, 'in', 'beside.recipe.json'), 'beside');
    const names = ['beside.recipe.json', 'missing.recipe.json', '../outside.recipe.json', '/etc/passwd', 7];
    const text = JSON.stringify({ recipes: names.map((file) => ({ file })) });
    const path = join(folder, 'in', 'slack.pattern.json');
    writeFileSync(path, text);
    expect(await given(path)).toEqual({
      name: 'slack.pattern.json',
      text,
      beside: { 'beside.recipe.json': 'beside' },
    });
  });

  it('comes alone when it names none, or is no pattern at all', async () => {
    for (const text of ['{}', '[1]', 'null', 'no JSON', '{"recipes":[null,"x",{"file":"x.txt"}]}']) {
      const path = join(folder, 'one.json');
      writeFileSync(path, text);
      expect(await given(path)).toEqual({ name: 'one.json', text });
    }
  });
});
