import { spawnSync } from 'node:child_process';
import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { freshFolder } from '../helpers/folder.ts';

const project = resolve(import.meta.dirname, '../../..');
const standIn = join(import.meta.dirname, 'standIn');

/** The program built as `npm start` builds it, in a folder of the test's own, without the window's page. */
function built(): string {
  const folder = freshFolder();
  for (const part of ['node_modules', 'resources', 'package.json']) {
    symlinkSync(join(project, part), join(folder, part), part === 'package.json' ? 'file' : 'junction');
  }
  mkdirSync(join(folder, 'out', 'renderer'), { recursive: true });
  writeFileSync(join(folder, 'out', 'renderer', 'index.html'), '<!doctype html><title>Studio</title>');
  const made = spawnSync(process.execPath, [join(standIn, 'build.ts'), folder], { encoding: 'utf8' });
  expect(made.stderr + made.stdout).toBe('');
  return folder;
}

describe('the desktop program as it is built', () => {
  it('opens on the demo, publishes it, shows its page, and ends', () => {
    const folder = built();
    const register = pathToFileURL(join(standIn, 'register.ts')).href;
    const run = spawnSync(process.execPath, ['--import', register, join(folder, 'out', 'main', 'index.js')], {
      encoding: 'utf8',
      env: { ...process.env, PIECEWRIGHT_HOME: join(folder, 'home') },
    });
    expect(run.stderr).toBe('');
    expect(JSON.parse(run.stdout)).toEqual({
      preload: join(folder, 'out', 'preload', 'preload.cjs'),
      first: 'harbour-lights',
      job: { state: 'done', progress: 1, doing: 'Done' },
      file: 'harbour-lights-edition-1-letter.pdf',
      page: [200, 'text/html; charset=utf-8'],
    });
    expect(run.status).toBe(0);
  }, 60_000);

  it('has a preload that a sandboxed page can load: CommonJS that asks for nothing but electron', () => {
    const folder = built();
    const check = `
      const asked = [];
      const code = require('node:fs').readFileSync(${JSON.stringify(join(folder, 'out', 'preload', 'preload.cjs'))}, 'utf8');
      const exposed = [];
      const electron = { contextBridge: { exposeInMainWorld: (name, api) => exposed.push(name, Object.keys(api)) }, ipcRenderer: {} };
      new Function('require', 'module', 'exports', code)((name) => (asked.push(name), electron), { exports: {} }, {});
      console.log(JSON.stringify({ asked, exposed }));`;
    const run = spawnSync(process.execPath, ['-e', check], { encoding: 'utf8' });
    expect(JSON.parse(run.stdout)).toEqual({ asked: ['electron'], exposed: ['piecewright', ['call', 'opened']] });
  });
});
