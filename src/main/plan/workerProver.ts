import { Worker } from 'node:worker_threads';
import type { StripPlan } from '../../shared/cloth/strips/planStrips.ts';
import type { Inches } from '../../shared/measure/inches.ts';
import { Refused } from '../refusal.ts';
import type { FromProver, ProofRequest, ToProver } from './messages.ts';

const PROGRAM = new URL(import.meta.url.endsWith('.ts') ? './prove.worker.ts' : './prove.worker.js', import.meta.url);

/** How near a proof is: the plan there is, and what no plan can be shorter than. */
export type Nearer = (now: { readonly length: Inches; readonly bound: Inches }) => void;

/** Proves cutting plans away from the thread that answers calls. */
export interface Prover {
  /** The best plan within its seconds; rejects with a refusal of the kind 'stopped' when the signal says so. */
  prove(request: ProofRequest, nearer: Nearer, signal: AbortSignal): Promise<StripPlan>;
  close(): Promise<void>;
}

/**
 * Proofs on a worker thread that is begun with the first and kept, because a fresh one must load its solver again. A proof
 * hears nothing while its solver runs, so stopping it ends the thread; proofs that wait behind it are begun again on the next. One
 * that is not done when its time is over is ended so, too, and what it had found is the answer.
 */
export function workerProver(program: URL = PROGRAM): Prover {
  const waiting = new Map<number, Waiting>();
  let worker: Worker | null = null;
  let numbers = 0;

  const settle = (number: number, how: (one: Waiting) => void): void => {
    const one = waiting.get(number);
    waiting.delete(number);
    clearTimeout(one?.timer);
    if (waiting.size === 0) worker?.unref();
    if (one !== undefined) how(one);
  };
  const send = (message: ToProver): void => {
    worker ??= begun(program, waiting, settle, overtime, () => {
      worker = null;
    });
    worker.ref();
    worker.postMessage(message);
  };
  const stop = (number: number): void => {
    if (waiting.has(number)) end(number, ({ fail }) => fail(stopped()));
  };
  const overtime = (number: number): void => {
    const best = waiting.get(number)?.best;
    if (best !== undefined) end(number, ({ finish }) => finish(best));
  };
  const end = (number: number, how: (one: Waiting) => void): void => {
    settle(number, how);
    void worker?.terminate();
    worker = null;
    for (const [other, { request }] of waiting) send({ number: other, request });
  };
  return {
    prove: (request, nearer, signal) =>
      new Promise((finish, fail) => {
        if (signal.aborted) return fail(stopped());
        numbers += 1;
        const number = numbers;
        waiting.set(number, { request, nearer, finish, fail });
        signal.addEventListener('abort', () => stop(number), { once: true });
        send({ number, request });
      }),
    async close() {
      for (const number of [...waiting.keys()]) settle(number, ({ fail }) => fail(stopped()));
      await worker?.terminate();
      worker = null;
    },
  };
}

/** How much longer than its seconds a proof may take, milliseconds: what a solver needs to hear that its time is over. */
const GRACE = 700;

interface Waiting {
  readonly request: ProofRequest;
  readonly nearer: Nearer;
  readonly finish: (plan: StripPlan) => void;
  readonly fail: (error: Error) => void;
  /** The best plan it has told of. */
  best?: StripPlan;
  timer?: NodeJS.Timeout;
}

function begun(
  program: URL,
  waiting: ReadonlyMap<number, Waiting>,
  settle: (number: number, how: (one: Waiting) => void) => void,
  overtime: (number: number) => void,
  ended: () => void,
): Worker {
  const worker = new Worker(program);
  worker.on('message', (message: FromProver) => {
    const { number } = message;
    const one = waiting.get(number);
    switch (message.kind) {
      case 'begun':
        if (one !== undefined) one.timer = setTimeout(() => overtime(number), one.request.seconds * 1000 + GRACE);
        return;
      case 'nearer':
        if (one !== undefined) hear(one, message);
        return;
      case 'proven':
        settle(number, ({ finish }) => finish(message.plan));
        return;
      case 'broken':
        settle(number, ({ fail }) => fail(new Error(message.trace)));
    }
  });
  worker.on('error', (error: Error) => {
    ended();
    for (const number of [...waiting.keys()]) settle(number, ({ fail }) => fail(error));
  });
  worker.unref();
  return worker;
}

function hear(one: Waiting, { length, bound, plan }: Extract<FromProver, { kind: 'nearer' }>): void {
  const best = plan ?? one.best;
  // A bound that is raised afterwards holds for the plan told of before.
  if (best !== undefined) one.best = { ...best, bound: Math.max(best.bound, Math.min(bound, best.length)) };
  one.nearer({ length, bound });
}

function stopped(): Refused {
  return new Refused('stopped', 'Stopped before the plan was proven. The plan there was is kept.');
}
