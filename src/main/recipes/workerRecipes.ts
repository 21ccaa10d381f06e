import { Worker } from 'node:worker_threads';
import type { Listening, RecipeWork } from '../service/recipeWork.ts';
import type { FromRecipes, ToRecipes } from './messages.ts';

const PROGRAM = new URL(
  import.meta.url.endsWith('.ts') ? './recipes.worker.ts' : './recipes.worker.js',
  import.meta.url,
);

/** What the thread may answer a question with. */
type Given = Extract<FromRecipes, { kind: 'ready' | 'read' | 'checked' }>;

interface Waiting {
  readonly finish: (given: Given) => void;
  readonly fail: (error: unknown) => void;
  readonly tell?: ((done: number) => void) | undefined;
}

type Asked =
  | { readonly kind: 'ready' }
  | Omit<Extract<ToRecipes, { kind: 'read' }>, 'number'>
  | Omit<Extract<ToRecipes, { kind: 'check' }>, 'number'>;

/**
 * The work at recipes on a thread that is begun with the first and kept: calls are answered meanwhile, however many recipes
 * were brought in. The program can end while the thread has nothing to do.
 * @param folder of the library
 */
export function workerRecipes(folder: string, report: (error: unknown) => void, program: URL = PROGRAM): RecipeWork {
  const waiting = new Map<number, Waiting>();
  let worker: Worker | null = null;
  let closed = false;
  let numbers = 0;

  const settle = (number: number, how: (one: Waiting) => void): void => {
    const one = waiting.get(number);
    waiting.delete(number);
    if (waiting.size === 0) worker?.unref();
    if (one !== undefined) how(one);
  };
  const hear = (message: FromRecipes): void => {
    if (message.kind === 'report') report(new Error(message.trace));
    else if (message.kind === 'checking') waiting.get(message.number)?.tell?.(message.done);
    else if (message.kind === 'broken') settle(message.number, ({ fail }) => fail(new Error(message.trace)));
    else settle(message.number, ({ finish }) => finish(message));
  };
  const end = (error: Error): void => {
    worker = null;
    for (const number of [...waiting.keys()]) settle(number, ({ fail }) => fail(error));
  };
  const begun = (): Worker => {
    const fresh = new Worker(program);
    fresh.on('message', hear);
    fresh.on('error', end);
    fresh.postMessage({ kind: 'begin', folder } satisfies ToRecipes);
    return fresh;
  };
  const ask = (asked: Asked, { tell, signal }: Listening = {}): Promise<Given> =>
    new Promise((finish, fail) => {
      if (closed) return fail(new Error('The library is closed'));
      if (signal?.aborted === true) return fail(signal.reason);
      numbers += 1;
      const number = numbers;
      waiting.set(number, { finish, fail, tell });
      worker ??= begun();
      worker.ref();
      worker.postMessage({ ...asked, number } satisfies ToRecipes);
      const stop = () => {
        if (waiting.has(number)) worker?.postMessage({ kind: 'stop', number } satisfies ToRecipes);
        settle(number, (one) => one.fail(signal?.reason));
      };
      signal?.addEventListener('abort', stop, { once: true });
    });
  return {
    ready: async () => {
      await ask({ kind: 'ready' });
    },
    read: async (text) => {
      const given = await ask({ kind: 'read', text });
      return given.kind === 'read' ? given.file : { kind: null };
    },
    check: async (recipes, places, listening) => {
      const given = await ask({ kind: 'check', recipes, places }, listening);
      return given.kind === 'checked' ? given.findings : [];
    },
    close: async () => {
      closed = true;
      const last = worker;
      end(new Error('The library is closed'));
      await last?.terminate();
    },
  };
}
