import { randomUUID } from 'node:crypto';
import type { Job, PublishedFile, PublishRequest } from '../../shared/contract.ts';
import { knownRefusal, Refused, refusalOf } from '../refusal.ts';
import type { Publisher } from './publisher.ts';

/** How many jobs are remembered; the oldest that is no longer working is forgotten first, with its file. */
const REMEMBERED = 6;

/** The work that takes longer than a call: begun, asked after, stopped, and its file fetched. */
export interface Jobs {
  start(request: PublishRequest): string;
  job(id: string): Job;
  /** Stops a job that is working; one that has ended stays as it is. */
  cancel(id: string): void;
  result(id: string): PublishedFile;
  close(): Promise<void>;
}

interface Running {
  job: Job;
  file: PublishedFile | null;
  readonly stop: AbortController;
}

export function makeJobs(publisher: Publisher, report: (error: unknown) => void): Jobs {
  const jobs = new Map<string, Running>();
  return {
    start(request) {
      forget(jobs);
      const id = randomUUID();
      const running: Running = {
        job: { state: 'working', progress: 0, doing: 'Beginning' },
        file: null,
        stop: new AbortController(),
      };
      jobs.set(id, running);
      void run(running, request, publisher, report);
      return id;
    },
    job: (id) => known(jobs, id).job,
    cancel: (id) => stop(known(jobs, id)),
    result: (id) => fileOf(known(jobs, id)),
    async close() {
      for (const running of jobs.values()) stop(running);
      await publisher.close();
    },
  };
}

async function run(
  running: Running,
  request: PublishRequest,
  publisher: Publisher,
  report: (error: unknown) => void,
): Promise<void> {
  const tell = (progress: number, doing: string): void => {
    if (running.job.state !== 'working') return;
    const further = Math.min(1, Math.max(running.job.progress, progress));
    running.job = { state: 'working', progress: further, doing };
  };
  try {
    const file = await publisher.make(request, tell, running.stop.signal);
    if (running.stop.signal.aborted) return;
    running.file = file;
    running.job = { state: 'done', progress: 1, doing: 'Done' };
  } catch (error) {
    if (running.stop.signal.aborted) return;
    if (knownRefusal(error) === null) report(error);
    running.job = { ...running.job, state: 'refused', doing: 'Not made', refusal: refusalOf(error) };
  }
}

function stop(running: Running): void {
  if (running.job.state !== 'working') return;
  running.job = { ...running.job, state: 'stopped', doing: 'Stopped' };
  running.stop.abort();
}

function known(jobs: ReadonlyMap<string, Running>, id: string): Running {
  const running = jobs.get(id);
  if (running === undefined) throw new Refused('not-found', 'That work is no longer remembered. Start it again.');
  return running;
}

function fileOf({ job, file }: Running): PublishedFile {
  if (file !== null) return file;
  if (job.refusal !== undefined) throw new Refused(job.refusal.kind, job.refusal.words, job.refusal.findings);
  if (job.state === 'stopped')
    throw new Refused('stopped', 'The making of these pages was stopped, so there is no file.');
  throw new Refused('not-found', 'The pages are still being made.');
}

function forget(jobs: Map<string, Running>): void {
  for (const [id, { job }] of jobs) {
    if (jobs.size < REMEMBERED) return;
    if (job.state !== 'working') jobs.delete(id);
  }
}
