import type { Step } from '../../../shared/measure/steps.ts';
import type { JobName } from './jobs.ts';
import { keepSame } from './keepSame.ts';
import type { FromThread, ToThread } from './messages.ts';

/** So long a job goes on before it listens whether it is still wanted, milliseconds. */
const BREATH = 40;

type Work = Readonly<Record<JobName, (...args: never[]) => unknown>>;

/** The working side of a thread: does one job after another, and leaves one at its next step when it is no longer wanted. */
export function threadOf(jobs: Work, tell: (message: FromThread) => void): (message: ToThread) => void {
  const unwanted = new Set<number>();
  const before = new Map<JobName, readonly unknown[]>();
  let last: Promise<void> = Promise.resolve();

  const answer = async ({ number, name, args }: Extract<ToThread, { kind: 'do' }>): Promise<void> => {
    await breath();
    const known = keepSame(before.get(name), args);
    before.set(name, known);
    try {
      const wanted = () => !unwanted.has(number);
      const given = wanted() ? jobs[name](...(known as never[])) : undefined;
      const done = isSteps(given) ? await walk(given, wanted, (step) => tell({ kind: 'step', number, step })) : given;
      tell(wanted() ? { kind: 'done', number, answer: done } : { kind: 'stopped', number });
    } catch (thrown) {
      tell({ kind: 'broken', number, ...said(thrown) });
    }
    unwanted.delete(number);
  };
  return (message) => {
    if (message.kind === 'stop') unwanted.add(message.number);
    else last = last.then(() => answer(message));
  };
}

/** Goes step by step for as long as the answer is wanted. */
async function walk(
  steps: Generator<Step, unknown>,
  wanted: () => boolean,
  tell: (step: Step) => void,
): Promise<unknown> {
  let heard = performance.now();
  while (wanted()) {
    const next = steps.next();
    if (next.done === true) return next.value;
    tell(next.value);
    if (performance.now() - heard < BREATH) continue;
    await breath();
    heard = performance.now();
  }
  return undefined;
}

/** Lets messages in. */
function breath(): Promise<void> {
  return new Promise((go) => setTimeout(go, 0));
}

export function isSteps(given: unknown): given is Generator<Step, unknown> {
  return typeof given === 'object' && given !== null && 'next' in given && Symbol.iterator in given;
}

function said(thrown: unknown): { readonly words: string; readonly trace: string } {
  if (!(thrown instanceof Error)) return { words: String(thrown), trace: '' };
  return { words: thrown.message, trace: thrown.stack ?? '' };
}
