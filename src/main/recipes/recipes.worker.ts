import { parentPort } from 'node:worker_threads';
import { makeReader } from '../reader.ts';
import { type RecipeWork, recipeWorkIn } from '../service/recipeWork.ts';
import { openStore } from '../store/store.ts';
import type { FromRecipes, ToRecipes } from './messages.ts';

/** Works at recipes on a thread of its own, with its own way into the library. */
const port = parentPort;
if (port === null) throw new Error('recipes.worker runs as a worker thread');

let work: RecipeWork | null = null;

port.on('message', (message: ToRecipes) => void answer(message));

async function answer(message: ToRecipes): Promise<void> {
  if (message.kind === 'begin') {
    const store = openStore({ folder: message.folder, now: () => new Date() });
    work = recipeWorkIn(store, makeReader([]), (error) => tell({ kind: 'report', trace: traceOf(error) }));
    return;
  }
  const { number } = message;
  try {
    if (work === null) throw new Error('The thread was not told of a library');
    if (message.kind === 'ready') {
      await work.ready();
      tell({ kind: 'ready', number });
    } else tell({ kind: 'checked', number, findings: await work.check(message.recipes, message.places) });
  } catch (error) {
    tell({ kind: 'broken', number, trace: traceOf(error) });
  }
}

function traceOf(error: unknown): string {
  return error instanceof Error ? (error.stack ?? error.message) : String(error);
}

function tell(message: FromRecipes): void {
  port?.postMessage(message);
}
