import { Worker } from 'node:worker_threads';
import type { PublishedFile } from '../../shared/contract.ts';
import { Refused } from '../refusal.ts';
import type { Publisher, Tell } from '../service/publisher.ts';
import type { FromWorker, ToWorker } from './messages.ts';

const PROGRAM = new URL(
  import.meta.url.endsWith('.ts') ? './publish.worker.ts' : './publish.worker.js',
  import.meta.url,
);

/** How long work that was told to stop may go on before its thread is ended, milliseconds. */
const GRACE = 2000;

/** One publication being made. */
interface Making {
  readonly tell: Tell;
  readonly finish: (file: PublishedFile) => void;
  readonly fail: (error: Error) => void;
}

/**
 * Makes publications on a worker thread, which is begun with the first and kept, because a fresh one must load its fonts
 * again. The program can end while the thread has nothing to do.
 */
export function workerPublisher(program: URL = PROGRAM): Publisher {
  let thread: Thread | null = null;
  return {
    make: (request, tell, signal) =>
      new Promise((resolve, reject) => {
        if (signal.aborted) return reject(stopped());
        if (thread === null || thread.ended()) thread = startThread(program);
        const number = thread.make({ tell, finish: resolve, fail: reject });
        const { stop, send } = thread;
        signal.addEventListener('abort', () => stop(number), { once: true });
        send({ kind: 'make', number, request });
      }),
    async close() {
      await thread?.close();
      thread = null;
    },
  };
}

interface Thread {
  make(making: Making): number;
  stop(number: number): void;
  send(message: ToWorker): void;
  ended(): boolean;
  close(): Promise<void>;
}

function startThread(program: URL): Thread {
  const worker = new Worker(program);
  const makings = new Map<number, Making>();
  let numbers = 0;
  let ended = false;

  const settle = (number: number, how: (making: Making) => void): void => {
    const making = makings.get(number);
    makings.delete(number);
    if (makings.size === 0) worker.unref();
    if (making !== undefined) how(making);
  };
  const failAll = (error: Error): void => {
    ended = true;
    for (const number of [...makings.keys()]) settle(number, (making) => making.fail(error));
  };
  worker.on('message', (message: FromWorker) => hear(message, makings, settle));
  worker.on('error', (error: Error) => failAll(error));
  worker.on('exit', () => failAll(stopped()));
  worker.unref();

  return {
    make(making) {
      numbers += 1;
      makings.set(numbers, making);
      worker.ref();
      return numbers;
    },
    stop(number) {
      if (!makings.has(number)) return;
      worker.postMessage({ kind: 'stop', number } satisfies ToWorker);
      // Long work that does not hear goes down with its thread; the next publication begins a new one.
      setTimeout(() => makings.has(number) && void worker.terminate(), GRACE).unref();
    },
    send: (message) => worker.postMessage(message),
    ended: () => ended,
    close: async () => {
      await worker.terminate();
    },
  };
}

function hear(
  message: FromWorker,
  makings: ReadonlyMap<number, Making>,
  settle: (number: number, how: (making: Making) => void) => void,
): void {
  const { number } = message;
  if (message.kind === 'progress') makings.get(number)?.tell(message.progress, message.doing);
  else if (message.kind === 'made') settle(number, (making) => making.finish(packed(message)));
  else if (message.kind === 'refused') settle(number, (making) => making.fail(refused(message)));
  else settle(number, (making) => making.fail(new Error(message.trace)));
}

function packed({ name, pdf }: { readonly name: string; readonly pdf: Uint8Array }): PublishedFile {
  return {
    name,
    type: 'application/pdf',
    data: Buffer.from(pdf.buffer, pdf.byteOffset, pdf.byteLength).toString('base64'),
  };
}

function refused({ refusal }: Extract<FromWorker, { kind: 'refused' }>): Refused {
  return new Refused(refusal.kind, refusal.words, refusal.findings);
}

function stopped(): Refused {
  return new Refused('stopped', 'Stopped before the pages were finished. Nothing was written.');
}
