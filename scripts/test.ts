// The one test command: types, lint and format, walls, what nobody uses, then every test. It goes on after a failure, so that one run
// tells everything, and ends with the count of tests and the list of what failed.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';

const project = resolve(import.meta.dirname, '..');
const folder = mkdtempSync(join(tmpdir(), 'piecewright-tests-'));
const countsFile = join(folder, 'counts.json');
const program = (name: string, file: string) => join(project, 'node_modules', name, file);

const steps: readonly { readonly name: string; readonly run: readonly string[] }[] = [
  { name: 'Types', run: ['scripts/types.ts'] },
  { name: 'Lint and format', run: [program('@biomejs/biome', 'bin/biome'), 'ci', '--error-on-warnings'] },
  { name: 'Walls', run: ['scripts/walls.ts'] },
  { name: 'Nothing unused', run: [program('knip', 'bin/knip.js'), '--no-progress'] },
  {
    name: 'Tests',
    run: [
      ...[program('vitest', 'vitest.mjs'), 'run', '--reporter=default', '--reporter=json'],
      ...[`--outputFile.json=${countsFile}`, ...process.argv.slice(2)],
    ],
  },
];

/** The plain closing line, or nothing when the tests did not get so far as to be counted. */
function counts(): string {
  try {
    const read = JSON.parse(readFileSync(countsFile, 'utf8'));
    const skipped = read.numPendingTests + (read.numTodoTests ?? 0);
    return `${read.numPassedTests} passed, ${read.numFailedTests} failed, ${skipped} skipped`;
  } catch {
    return '';
  }
}

const failed = steps.filter(({ name, run }) => {
  console.log(`\n── ${name} ${'─'.repeat(60 - name.length)}`);
  const started = performance.now();
  const { status } = spawnSync(process.execPath, [...run], { cwd: project, stdio: 'inherit' });
  const seconds = ((performance.now() - started) / 1000).toFixed(1);
  console.log(`${name}: ${status === 0 ? 'fine' : 'FAILED'} in ${seconds} s`);
  return status !== 0;
});

console.log(`\n${failed.length === 0 ? 'All is well.' : `Failed: ${failed.map(({ name }) => name).join(', ')}.`}`);
const counted = counts();
if (counted) console.log(counted);
rmSync(folder, { recursive: true, force: true });
process.exitCode = failed.length === 0 && counted ? 0 : 1;
