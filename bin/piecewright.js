#!/usr/bin/env node
// Starts the terminal program on the Node that the project pins, whatever Node the machine has.
// Plain JavaScript, because the machine's own Node must be able to read it.
import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const project = join(dirname(fileURLToPath(import.meta.url)), '..');
const source = join(project, 'src/main/cli/start.js');
const built = join(project, 'out/main/cli.js');
// Node reads TypeScript anywhere but inside node_modules, where an installed copy lives.
const program = project.split(/[\\/]/).includes('node_modules') && existsSync(built) ? built : source;

/** The pinned Node if it is there, else the Node this runs on. */
function pinnedNode() {
  const name = process.platform === 'win32' ? 'node.exe' : 'node';
  try {
    const file = join(dirname(createRequire(import.meta.url).resolve('node/package.json')), 'bin', name);
    return existsSync(file) ? file : process.execPath;
  } catch {
    return process.execPath;
  }
}

const child = spawn(pinnedNode(), [program, ...process.argv.slice(2)], { stdio: 'inherit' });
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, () => child.kill(signal));
child.on('error', (error) => {
  console.error(`Piecewright could not start: ${error.message}`);
  process.exitCode = 2;
});
child.on('exit', (code, signal) => {
  process.exitCode = signal ? 1 : (code ?? 1);
});
