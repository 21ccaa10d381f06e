import { parentPort } from 'node:worker_threads';
import { proveStrips } from '../../shared/cloth/strips/proof/proveStrips.ts';
import { highsSolver } from './highs.ts';
import type { FromProver, ToProver } from './messages.ts';

/** Proves cutting plans on a thread of its own, one after another; whoever wants one no longer ends the thread. */
const port = parentPort;
if (port === null) throw new Error('prove.worker runs as a worker thread');

port.on('message', (message: ToProver) => void prove(message));

async function prove({ number, request }: ToProver): Promise<void> {
  try {
    const solve = await highsSolver();
    tell({ kind: 'begun', number });
    let shortest = Number.POSITIVE_INFINITY;
    const start = performance.now();
    const plan = proveStrips(request.kinds, request.width, {
      solve,
      secondsLeft: () => request.seconds - (performance.now() - start) / 1000,
      tell: ({ length, bound, plan }) => {
        const better = length < shortest;
        shortest = Math.min(shortest, length);
        tell({ kind: 'nearer', number, length, bound, ...(better ? { plan: plan() } : {}) });
      },
    });
    tell({ kind: 'proven', number, plan });
  } catch (error) {
    tell({ kind: 'broken', number, trace: error instanceof Error ? (error.stack ?? error.message) : String(error) });
  }
}

function tell(message: FromProver): void {
  port?.postMessage(message);
}
