import type { Contract, Job } from '../../shared/contract.ts';
import { Refused } from './host.ts';

/** How often the host is asked how far it is, milliseconds. */
const ASK_EVERY = 120;

/** How far the host is with work that takes longer than a call. */
export interface HowFar {
  /** 0 to 1. */
  readonly progress: number;
  /** What is being done, in words. */
  readonly doing: string;
}

export interface JobWishes {
  /** Stops the host too. */
  readonly signal: AbortSignal;
  readonly tell: (howFar: HowFar) => void;
  /** What is said when it was stopped. */
  readonly stopped: string;
}

/**
 * Waits until a job of the host is done, telling how far it is.
 * @throws Refused with the host's reason, or as 'stopped'
 */
export async function untilDone(
  host: Pick<Contract, 'job' | 'cancel'>,
  id: string,
  { signal, tell, stopped }: JobWishes,
): Promise<void> {
  const stop = () => void host.cancel(id).catch(() => undefined);
  signal.addEventListener('abort', stop, { once: true });
  try {
    if (signal.aborted) stop();
    for (;;) {
      const job: Job = await host.job(id);
      if (signal.aborted || job.state === 'stopped') throw new Refused({ kind: 'stopped', words: stopped });
      if (job.state === 'refused') throw new Refused(job.refusal ?? { kind: 'broken', words: job.doing });
      tell({ progress: job.progress, doing: job.doing });
      if (job.state === 'done') return;
      await new Promise((resolve) => setTimeout(resolve, ASK_EVERY));
    }
  } finally {
    signal.removeEventListener('abort', stop);
  }
}
