import { parentPort } from 'node:worker_threads';
import { knownRefusal } from '../refusal.ts';
import type { FromWorker, ToWorker } from './messages.ts';
import { makePublication } from './publication.ts';

/** Makes publications on a thread of its own, so that the window and its calls never wait for one. */
const port = parentPort;
if (port === null) throw new Error('publish.worker runs as a worker thread');

const working = new Map<number, AbortController>();

port.on('message', (message: ToWorker) => {
  if (message.kind === 'stop') working.get(message.number)?.abort();
  else void make(message.number, message.request);
});

async function make(number: number, request: Extract<ToWorker, { kind: 'make' }>['request']): Promise<void> {
  const stop = new AbortController();
  working.set(number, stop);
  try {
    const made = await makePublication(
      request,
      (progress, doing) => tell({ kind: 'progress', number, progress, doing }),
      stop.signal,
    );
    tell({ kind: 'made', number, ...made });
  } catch (error) {
    const refusal = knownRefusal(error);
    if (refusal !== null) tell({ kind: 'refused', number, refusal });
    else
      tell({ kind: 'broken', number, trace: error instanceof Error ? (error.stack ?? error.message) : String(error) });
  } finally {
    working.delete(number);
  }
}

function tell(message: FromWorker): void {
  port?.postMessage(message);
}
