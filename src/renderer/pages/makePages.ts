import type { Contract, Job, PublishedFile, PublishRequest, Refusal } from '../../shared/contract.ts';
import { Refused } from '../state/host.ts';

/** How often the host is asked how far it is, milliseconds. */
const ASK_EVERY = 120;

/** How far the pages are. */
export interface Making {
  /** 0 to 1. */
  readonly progress: number;
  /** What is being done, in words. */
  readonly doing: string;
}

const STOPPED: Refusal = {
  kind: 'stopped',
  words: 'Stopped. Nothing was written.',
};

type Publisher = Pick<Contract, 'publish' | 'job' | 'cancel' | 'result'>;

/**
 * Has the host make the PDF and waits for the file, telling how far it is. Stopping the signal stops the host too.
 * @throws Refused with the host's reason, or as 'stopped'
 */
export async function makePages(
  host: Publisher,
  request: PublishRequest,
  signal: AbortSignal,
  tell: (making: Making) => void,
): Promise<PublishedFile> {
  if (signal.aborted) throw new Refused(STOPPED);
  const { job } = await host.publish(request);
  const stop = () => void host.cancel(job).catch(() => undefined);
  signal.addEventListener('abort', stop, { once: true });
  try {
    if (signal.aborted) stop();
    await untilDone(host, job, signal, tell);
    return await host.result(job);
  } finally {
    signal.removeEventListener('abort', stop);
  }
}

async function untilDone(
  host: Publisher,
  id: string,
  signal: AbortSignal,
  tell: (making: Making) => void,
): Promise<void> {
  for (;;) {
    const job: Job = await host.job(id);
    if (signal.aborted || job.state === 'stopped') throw new Refused(STOPPED);
    if (job.state === 'refused') throw new Refused(job.refusal ?? { kind: 'broken', words: job.doing });
    tell({ progress: job.progress, doing: job.doing });
    if (job.state === 'done') return;
    await new Promise((resolve) => setTimeout(resolve, ASK_EVERY));
  }
}

/** The file's bytes. */
export function bytesOf(file: PublishedFile): Uint8Array<ArrayBuffer> {
  const text = atob(file.data);
  const bytes = new Uint8Array(text.length);
  for (let i = 0; i < text.length; i += 1) bytes[i] = text.charCodeAt(i);
  return bytes;
}
