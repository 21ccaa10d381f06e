import { Worker } from 'node:worker_threads';
import type { Finding } from '../../shared/measure/finding.ts';
import type { RecipeWork } from '../service/recipeWork.ts';
import type { FromRecipes, ToRecipes } from './messages.ts';

const PROGRAM = new URL(
  import.meta.url.endsWith('.ts') ? './recipes.worker.ts' : './recipes.worker.js',
  import.meta.url,
);

interface Waiting {
  readonly finish: (findings: readonly Finding[]) => void;
  readonly fail: (error: Error) => void;
}

type Asked = { readonly kind: 'ready' } | Omit<Extract<ToRecipes, { kind: 'check' }>, 'number'>;

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
    else if (message.kind === 'broken') settle(message.number, ({ fail }) => fail(new Error(message.trace)));
    else settle(message.number, ({ finish }) => finish(message.kind === 'checked' ? message.findings : []));
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
  const ask = (asked: Asked): Promise<readonly Finding[]> =>
    new Promise((finish, fail) => {
      if (closed) return fail(new Error('The library is closed'));
      numbers += 1;
      waiting.set(numbers, { finish, fail });
      worker ??= begun();
      worker.ref();
      worker.postMessage({ ...asked, number: numbers } satisfies ToRecipes);
    });
  return {
    ready: async () => {
      await ask({ kind: 'ready' });
    },
    check: (recipes, places) => ask({ kind: 'check', recipes, places }),
    close: async () => {
      closed = true;
      const last = worker;
      end(new Error('The library is closed'));
      await last?.terminate();
    },
  };
}
