import type { Step } from '../../../shared/measure/steps.ts';
import type { JobAnswer, JobArgs, JobName } from './jobs.ts';

export interface AwayWishes {
  /** Stops the job; the promise then rejects with the signal's reason at once. */
  readonly signal?: AbortSignal | undefined;
  /** Hears each step before it begins. */
  readonly progress?: ((step: Step) => void) | undefined;
}

/**
 * Works something out away from the window's thread: `away('findSizes', [pattern, target], { signal })`. Arguments and
 * answers cross as copies. What the job throws comes back as an `Error` with its words.
 */
export type Away = <Name extends JobName>(
  name: Name,
  args: JobArgs<Name>,
  wishes?: AwayWishes,
) => Promise<JobAnswer<Name>>;
