import { rmSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { isFresh, lookOf, markFresh } from '../../scripts/freshBuild.ts';
import { makeTree } from '../walls/tree.ts';

describe('what is built', () => {
  let tree: ReturnType<typeof makeTree>;
  const fresh = () => isFresh(tree.folder, lookOf(tree.folder));

  beforeEach(() => {
    tree = makeTree({ 'src/renderer/main.tsx': 'one', 'src/shared/measure/inches.ts': 'two', 'README.md': 'three' });
    markFresh(tree.folder, lookOf(tree.folder));
  });
  afterEach(() => tree.remove());

  it('is fresh while its sources stand still', () => {
    expect(fresh()).toBe(true);
  });

  it('is stale before the first build', () => {
    rmSync(join(tree.folder, 'out'), { recursive: true });
    expect(fresh()).toBe(false);
  });

  it('is stale once a source was written, even with the same length', () => {
    const file = join(tree.folder, 'src/shared/measure/inches.ts');
    writeFileSync(file, 'new');
    utimesSync(file, new Date(0), new Date(1000));
    expect(fresh()).toBe(false);
  });

  it('is stale once a source was added or removed', () => {
    writeFileSync(join(tree.folder, 'src/renderer/more.ts'), '');
    expect(fresh()).toBe(false);
    rmSync(join(tree.folder, 'src/renderer/more.ts'));
    rmSync(join(tree.folder, 'src/renderer/main.tsx'));
    expect(fresh()).toBe(false);
  });

  it('stays fresh when the README is written', () => {
    writeFileSync(join(tree.folder, 'README.md'), 'changed');
    expect(fresh()).toBe(true);
  });
});
