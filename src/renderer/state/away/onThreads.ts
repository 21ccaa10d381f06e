import type { Away } from './away.ts';
import type { JobAnswer, JobName, Lane as LaneName } from './jobs.ts';
import { laneOf } from './jobs.ts';
import { type BeginThread, Lane } from './lane.ts';
import type { FromThread } from './messages.ts';

/** The window's own threads. */
const beginWorker: BeginThread = (hear, broke) => {
  const worker = new Worker(new URL('./away.worker.ts', import.meta.url), { type: 'module' });
  worker.addEventListener('message', ({ data }: MessageEvent<FromThread>) => hear(data));
  worker.addEventListener('error', (event) => broke(event.message || 'the thread for sums did not begin'));
  worker.addEventListener('messageerror', () => broke('an answer could not be read'));
  return { send: (message) => worker.postMessage(message), end: () => worker.terminate() };
};

/** Works things out on threads of the window: one for the open pattern, one for all that is asked beside it. */
export function onThreads(begin: BeginThread = beginWorker): Away {
  const lanes: Readonly<Record<LaneName, Lane>> = { pattern: new Lane(begin), asides: new Lane(begin) };
  return <Name extends JobName>(name: Name, args: readonly unknown[], wishes = {}) =>
    lanes[laneOf(name)].ask(name, args, wishes) as Promise<JobAnswer<Name>>;
}
