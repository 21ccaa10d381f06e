import { useEffect, useState } from 'react';
import type { Step } from '../../../shared/measure/steps.ts';
import { useStudio } from '../hooks.tsx';
import type { JobAnswer, JobArgs, JobName } from './jobs.ts';

export interface Asked<Answer> {
  /** The answer, or the one before it while a newer is worked out; null until the first. */
  readonly answer: Answer | null;
  /** True while what is shown does not answer the arguments of now. */
  readonly working: boolean;
  /** How far it is, when it says so. */
  readonly step: Step | null;
  /** Why there is no answer, in words for the designer. */
  readonly trouble: string | null;
}

interface Held<Name extends JobName> extends Asked<JobAnswer<Name>> {
  readonly name: Name;
  readonly args: JobArgs<Name> | null;
}

/**
 * Something worked out away from the window's thread, for as long as a view shows it; asked anew when an argument is another,
 * and the asking before it is dropped.
 * @param args null while there is nothing to ask
 */
export function useAway<Name extends JobName>(name: Name, args: JobArgs<Name> | null): Asked<JobAnswer<Name>> {
  const { away } = useStudio();
  const [held, setHeld] = useState<Held<Name>>({
    name,
    args: null,
    answer: null,
    working: false,
    step: null,
    trouble: null,
  });
  const isOf = (one: JobArgs<Name> | null) => sameArgs(one, args);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the arguments are looked at one by one
  useEffect(() => {
    if (args === null) return;
    const stop = new AbortController();
    const say = (more: Partial<Held<Name>>) => {
      if (!stop.signal.aborted) setHeld((before) => ({ ...before, ...more }));
    };
    say({ working: true, step: null });
    const done = { name, args, working: false, step: null };
    away(name, args, { signal: stop.signal, progress: (step) => say({ step }) }).then(
      (answer) => say({ ...done, answer, trouble: null }),
      (thrown: unknown) =>
        say({ ...done, answer: null, trouble: thrown instanceof Error ? thrown.message : String(thrown) }),
    );
    return () => stop.abort();
  }, [away, name, args === null, ...(args ?? [])]);
  if (args === null) return { answer: null, working: false, step: null, trouble: null };
  return { ...held, working: held.working || !isOf(held.args) };
}

function sameArgs(one: readonly unknown[] | null, other: readonly unknown[] | null): boolean {
  return (
    one !== null && other !== null && one.length === other.length && one.every((arg, i) => Object.is(arg, other[i]))
  );
}
