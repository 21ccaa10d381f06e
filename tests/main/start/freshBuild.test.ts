import { mkdirSync, readFileSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { freshBuild, isFresh, lookOf, markFresh } from '../../../src/main/start/freshBuild.ts';
import { freshFolder } from '../helpers/folder.ts';

let program: string;

function write(file: string, text: string): void {
  const path = join(program, file);
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, text);
}

/** A tool in the place of a real one, which writes down that it was called and leaves a page. */
function writeTool(file: string, ending = 'process.exitCode = 0;'): void {
  write(
    file,
    `const fs = require('node:fs');
     fs.appendFileSync('calls', '${file}\\n');
     fs.mkdirSync('out/renderer', { recursive: true });
     fs.writeFileSync('out/renderer/index.html', 'page');
     ${ending}`,
  );
}

const calls = () => readFileSync(join(program, 'calls'), 'utf8').trim().split('\n');
const VITE = 'node_modules/vite/bin/vite.js';
const ELECTRON_VITE = 'node_modules/electron-vite/bin/electron-vite.js';

beforeEach(() => {
  program = freshFolder();
  write('src/renderer/main.tsx', 'one');
  write('src/shared/measure/inches.ts', 'two');
  write('README.md', 'three');
  writeTool(VITE);
  writeTool(ELECTRON_VITE);
});

describe('what is built', () => {
  const fresh = () => isFresh(program, 'page', lookOf(program));

  beforeEach(() => {
    write('out/renderer/index.html', 'page');
    markFresh(program, 'page', lookOf(program));
  });

  it('is fresh while its sources stand still, whatever else is written', () => {
    expect(fresh()).toBe(true);
    write('README.md', 'changed');
    expect(fresh()).toBe(true);
  });

  it('is stale without its page, or before the first build', () => {
    rmSync(join(program, 'out', 'renderer'), { recursive: true });
    expect(fresh()).toBe(false);
  });

  it('is stale once a source was written, even with the same length', () => {
    write('src/shared/measure/inches.ts', 'new');
    utimesSync(join(program, 'src/shared/measure/inches.ts'), new Date(0), new Date(1000));
    expect(fresh()).toBe(false);
  });

  it('is stale once a source was added or removed', () => {
    write('src/renderer/more.ts', '');
    expect(fresh()).toBe(false);
    rmSync(join(program, 'src/renderer/more.ts'));
    rmSync(join(program, 'src/renderer/main.tsx'));
    expect(fresh()).toBe(false);
  });
});

describe('building', () => {
  const said: string[] = [];
  const build = (wanted: 'page' | 'window') => freshBuild(program, wanted, (line) => said.push(line));

  it('makes the page for the browser once, and says so', () => {
    expect([build('page'), build('page')]).toEqual([null, null]);
    expect(calls()).toEqual([VITE]);
    expect(said).toEqual(['Building the studio …']);
  });

  it('makes the window’s programs too when the window is wanted, and with them the page', () => {
    expect([build('page'), build('window'), build('window'), build('page')]).toEqual([null, null, null, null]);
    expect(calls()).toEqual([VITE, ELECTRON_VITE]);
  });

  it('tells what went wrong and tries again next time', () => {
    writeTool(VITE, "console.error('a bracket is missing'); process.exitCode = 1;");
    expect(build('page')).toContain('a bracket is missing');
    expect(build('page')).toContain('npm ci');
    expect(calls()).toHaveLength(2);
  });
});
