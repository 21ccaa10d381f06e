import { parentPort } from 'node:worker_threads';
import type { Finding } from '../../shared/measure/finding.ts';
import { makeReader } from '../reader.ts';
import { type RecipeWork, recipeWorkIn } from '../service/recipeWork.ts';
import { openStore } from '../store/store.ts';
import type { FromRecipes, ToRecipes } from './messages.ts';

/** Works at recipes on a thread of its own, with its own way into the library. */
const port = parentPort;
if (port === null) throw new Error('recipes.worker runs as a worker thread');

let work: RecipeWork | null = null;
const checks = new Map<number, AbortController>();

port.on('message', (message: ToRecipes) => void answer(message));

async function answer(message: ToRecipes): Promise<void> {
  if (message.kind === 'begin') {
    const store = openStore({ folder: message.folder, now: () => new Date() });
    work = recipeWorkIn(store, makeReader([]), (error) => tell({ kind: 'report', trace: traceOf(error) }));
    return;
  }
  const { number } = message;
  if (message.kind === 'stop') return checks.get(number)?.abort();
  try {
    if (work === null) throw new Error('The thread was not told of a library');
    if (message.kind === 'ready') {
      await work.ready();
      tell({ kind: 'ready', number });
    } else if (message.kind === 'read') tell({ kind: 'read', number, file: await work.read(message.text) });
    else tell({ kind: 'checked', number, findings: await check(work, message) });
  } catch (error) {
    tell({ kind: 'broken', number, trace: traceOf(error) });
  }
}

async function check(
  by: RecipeWork,
  { number, recipes, places }: Extract<ToRecipes, { kind: 'check' }>,
): Promise<readonly Finding[]> {
  const stop = new AbortController();
  checks.set(number, stop);
  try {
    return await by.check(recipes, places, {
      tell: (done) => tell({ kind: 'checking', number, done }),
      signal: stop.signal,
    });
  } finally {
    checks.delete(number);
  }
}

function traceOf(error: unknown): string {
  return error instanceof Error ? (error.stack ?? error.message) : String(error);
}

function tell(message: FromRecipes): void {
  port?.postMessage(message);
}
