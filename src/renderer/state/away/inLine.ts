import { toTheEnd } from '../../../shared/measure/steps.ts';
import type { Away, AwayWishes } from './away.ts';
import { JOBS, type JobAnswer, type JobArgs, type JobName } from './jobs.ts';
import { isSteps } from './thread.ts';

/** Stands in for some of the jobs. */
export type SomeJobs = { readonly [Name in JobName]?: (...args: JobArgs<Name>) => JobAnswer<Name> };

/** Runs something a little later; at once when it is not given. */
export type Later = (run: () => void) => void;

/** The same jobs on the caller's own thread, for places that have no other. */
export function inLine(some: SomeJobs = {}, later: Later = (run) => run()): Away {
  const jobs = { ...JOBS, ...some } as Readonly<Record<JobName, (...args: readonly unknown[]) => unknown>>;
  return <Name extends JobName>(name: Name, args: readonly unknown[], { signal }: AwayWishes = {}) =>
    new Promise<JobAnswer<Name>>((finish, fail) => {
      later(() => {
        if (signal?.aborted === true) return fail(signal.reason);
        try {
          const given = jobs[name](...args);
          finish((isSteps(given) ? toTheEnd(given as never) : given) as JobAnswer<Name>);
        } catch (thrown) {
          fail(thrown);
        }
      });
    });
}
