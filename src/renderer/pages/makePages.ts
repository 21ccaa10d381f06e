import type { Contract, PublishedFile, PublishRequest } from '../../shared/contract.ts';
import { Refused } from '../state/host.ts';
import { type HowFar, untilDone } from '../state/untilDone.ts';

/** How far the pages are. */
export type Making = HowFar;

const STOPPED = 'Stopped. Nothing was written.';

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
  if (signal.aborted) throw new Refused({ kind: 'stopped', words: STOPPED });
  const { job } = await host.publish(request);
  await untilDone(host, job, { signal, tell, stopped: STOPPED });
  return host.result(job);
}

/** The file's bytes. */
export function bytesOf(file: PublishedFile): Uint8Array<ArrayBuffer> {
  const text = atob(file.data);
  const bytes = new Uint8Array(text.length);
  for (let i = 0; i < text.length; i += 1) bytes[i] = text.charCodeAt(i);
  return bytes;
}
