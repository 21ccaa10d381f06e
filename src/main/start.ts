import { openService, programFolder } from './openService.ts';
import { refusalOf } from './refusal.ts';
import { electronBinary, fetchElectron, hasDisplay, runElectron } from './start/desktop.ts';
import { freshBuild } from './start/freshBuild.ts';
import { isTaken, serve } from './start/serve.ts';
import { readWishes, type Wishes } from './start/wishes.ts';

/**
 * `npm start`: the studio in its own window where the machine can show one, otherwise in the browser. The exit code is 0
 * when it ended as it should, 1 when it could not start, 2 when it was asked for something it does not know.
 */
async function start(): Promise<number> {
  const wishes = readWishes(process.argv.slice(2), process.env);
  if (!wishes.ok) return fail(wishes.findings[0]?.what ?? '', 2);
  if (wishes.value.browser) return serveInBrowser(wishes.value);
  const window = await openWindow();
  if (typeof window === 'number') return window;
  say(`${window} The studio opens in your browser instead.`);
  return serveInBrowser(wishes.value);
}

/** The exit code of the window once it is closed, or in one sentence why there is none. */
async function openWindow(): Promise<number | string> {
  if (!hasDisplay(process.env, process.platform)) return 'There is no display for a window of its own here.';
  const there = electronBinary(programFolder, process.env) !== null || fetchElectron(programFolder, say);
  const binary = there ? electronBinary(programFolder, process.env) : null;
  if (binary === null) return 'The desktop window could not be fetched.';
  const trouble = freshBuild(programFolder, 'window', say);
  if (trouble !== null) return fail(trouble, 1);
  const ended = await runElectron(binary, programFolder);
  return 'code' in ended ? ended.code : 'The desktop window could not be opened.';
}

async function serveInBrowser({ port }: Wishes): Promise<number> {
  const trouble = freshBuild(programFolder, 'page', say);
  if (trouble !== null) return fail(trouble, 1);
  try {
    const service = openService('browser', report);
    await serve({ service, program: programFolder, port, say, report });
    return 0;
  } catch (error) {
    if (isTaken(error)) return fail(`Port ${port ?? ''} cannot be had: another program uses it, or it is reserved.`, 1);
    return fail(refusalOf(error).words, 1);
  }
}

function say(line: string): void {
  console.log(line);
}

function report(error: unknown): void {
  console.error(error);
}

function fail(words: string, code: number): number {
  console.error(words);
  return code;
}

process.exitCode = await start();
