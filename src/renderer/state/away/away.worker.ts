import { JOBS } from './jobs.ts';
import type { ToThread } from './messages.ts';
import { threadOf } from './thread.ts';

/** A thread of the window: hears what is asked and answers, one job after another. */
const hear = threadOf(JOBS, (message) => postMessage(message));
addEventListener('message', ({ data }: MessageEvent<ToThread>) => hear(data));
