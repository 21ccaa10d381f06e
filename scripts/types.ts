// Type checks every room with the world it is allowed to know, and says all that is wrong, not only the first room's.
import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';

const project = resolve(import.meta.dirname, '..');
const compiler = resolve(project, 'node_modules/typescript/bin/tsc');

const failed = ['src/shared', 'src/main', 'src/renderer', 'tests'].filter((room) => {
  const { status } = spawnSync(process.execPath, [compiler, '-p', room], { cwd: project, stdio: 'inherit' });
  return status !== 0;
});
console.log(failed.length === 0 ? 'Every type fits.' : `Types do not fit in ${failed.join(', ')}.`);
process.exitCode = failed.length === 0 ? 0 : 1;
