import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { afterAll, afterEach, describe, expect, it, vi } from 'vitest';
import { findTool, requireTool } from '../helpers/tools.ts';
import { makeTree, project } from '../walls/tree.ts';

const helper = join(project, 'tests/helpers/tools.ts');
const { folder, remove } = makeTree({
  'needs.test.ts': `import { it } from 'vitest';
    import { describeWithTool } from '${helper}';
    describeWithTool('qpdf', 'a PDF', () => it('is sound', () => {}));`,
});

/** Runs a suite that needs qpdf on a machine without it. */
function runWithoutTools(ci: string): { status: number | null; said: string } {
  const vitest = join(project, 'node_modules/vitest/vitest.mjs');
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [vitest, 'run', '--root', folder, '--reporter=verbose'],
    { encoding: 'utf8', env: { PATH: folder, CI: ci, NO_COLOR: '1' } },
  );
  return { status, said: stdout + stderr };
}

describe('a test that needs a tool this machine lacks', () => {
  afterEach(() => vi.unstubAllEnvs());
  afterAll(remove);

  it('is skipped, and says what would un-skip it', () => {
    const { status, said } = runWithoutTools('');
    expect(said).toContain('a PDF (skipped: install qpdf to run this)');
    expect(status).toBe(0);
  });

  it('fails where everything must run', () => {
    const { status, said } = runWithoutTools('true');
    expect(said).toContain('qpdf missing: install qpdf to run this');
    expect(status).toBe(1);
  });

  it('is told what to install when it asks for the tool', () => {
    vi.stubEnv('PATH', folder);
    expect(findTool('pdftotext')).toBeUndefined();
    expect(() => requireTool('pdftotext')).toThrow('install poppler-utils');
  });
});
