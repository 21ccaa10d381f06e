import { randomUUID } from 'node:crypto';
import type { StripPlan } from '../../shared/cloth/strips/planStrips.ts';
import type { Imported, Job, PublishedFile } from '../../shared/contract.ts';
import { knownRefusal, Refused, refusalOf } from '../refusal.ts';
import type { Tell } from './publisher.ts';

/** How many jobs are remembered; the oldest that is no longer working is forgotten first, with its file. */
const REMEMBERED = 6;

/** Work that takes longer than a call, telling how far it is; gives up soon after the signal is raised. */
export type Work<Made> = (tell: Tell, signal: AbortSignal) => Promise<Made>;

/** What a job makes. */
type Made = { readonly file: PublishedFile } | { readonly plan: StripPlan } | { readonly imported: Imported };

/** The work that takes longer than a call: begun, asked after, stopped, and what it made fetched. */
export interface Jobs {
  start(work: Work<Made>): string;
  job(id: string): Job;
  /** Stops a job that is working; one that has ended stays as it is. */
  cancel(id: string): void;
  /** The file of a job that makes pages. */
  result(id: string): PublishedFile;
  /** The plan of a job that proves one. */
  proof(id: string): StripPlan;
  /** What a job that brings a file in has kept. */
  broughtIn(id: string): Imported;
  close(): void;
}

interface Running {
  job: Job;
  made: Made | null;
  readonly stop: AbortController;
}

export function makeJobs(report: (error: unknown) => void): Jobs {
  const jobs = new Map<string, Running>();
  return {
    start(work) {
      forget(jobs);
      const id = randomUUID();
      const running: Running = {
        job: { state: 'working', progress: 0, doing: 'Beginning' },
        made: null,
        stop: new AbortController(),
      };
      jobs.set(id, running);
      void run(running, work, report);
      return id;
    },
    job: (id) => known(jobs, id).job,
    cancel: (id) => stop(known(jobs, id)),
    result(id) {
      const made = madeBy(known(jobs, id), STILL.pages);
      if ('file' in made) return made.file;
      throw new Refused('not-found', 'That work makes no file.');
    },
    proof(id) {
      const made = madeBy(known(jobs, id), STILL.plan);
      if ('plan' in made) return made.plan;
      throw new Refused('not-found', 'That work proves no plan.');
    },
    broughtIn(id) {
      const made = madeBy(known(jobs, id), STILL.file);
      if ('imported' in made) return made.imported;
      throw new Refused('not-found', 'That work brings no file in.');
    },
    close() {
      for (const running of jobs.values()) stop(running);
    },
  };
}

async function run(running: Running, work: Work<Made>, report: (error: unknown) => void): Promise<void> {
  const tell = (progress: number, doing: string): void => {
    if (running.job.state !== 'working') return;
    const further = Math.min(1, Math.max(running.job.progress, progress));
    running.job = { state: 'working', progress: further, doing };
  };
  try {
    const made = await work(tell, running.stop.signal);
    if (running.stop.signal.aborted) return;
    running.made = made;
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

/** What is said of work that has made nothing: because it was stopped, or not yet. */
const STILL = {
  pages: {
    stopped: 'The making of these pages was stopped, so there is no file.',
    working: 'The pages are still being made.',
  },
  plan: { stopped: 'The proof was stopped, so there is no plan.', working: 'The plan is still being proven.' },
  file: {
    stopped: 'Bringing the file in was stopped; nothing of it was kept.',
    working: 'The file is still being read.',
  },
} as const;

function madeBy({ job, made }: Running, still: (typeof STILL)[keyof typeof STILL]): Made {
  if (made !== null) return made;
  if (job.refusal !== undefined) throw new Refused(job.refusal.kind, job.refusal.words, job.refusal.findings);
  if (job.state === 'stopped') throw new Refused('stopped', still.stopped);
  throw new Refused('not-found', still.working);
}

function forget(jobs: Map<string, Running>): void {
  for (const [id, { job }] of jobs) {
    if (jobs.size < REMEMBERED) return;
    if (job.state !== 'working') jobs.delete(id);
  }
}
