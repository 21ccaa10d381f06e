import type { Step } from '../../shared/measure/steps.ts';
import type { Pattern } from '../../shared/pattern/schema.ts';
import type { WorkedOut } from '../../shared/workroom/workedOut.ts';
import type { Away } from './away/away.ts';
import { keepSame } from './away/keepSame.ts';

export interface Heard {
  readonly done: (worked: WorkedOut) => void;
  readonly failed: (thrown: unknown) => void;
  /** How far sums are that are worth waiting for by name. */
  readonly step: (step: Step) => void;
}

/** Sums that are not done after so long say how far they are, and give way to a newer act. Milliseconds. */
const LONG = 400;

interface Running {
  readonly pattern: Pattern;
  readonly began: number;
  readonly stop: AbortController;
}

/**
 * Works patterns out one after another, away from the window's thread. Only the newest pattern asked for is worked out; the
 * answer before it stands until then. Quick sums are left to end, so that what is shown follows the hand; long ones, and those
 * of another pattern, are dropped for newer.
 */
export function workingBy(away: Away, heard: Heard): (pattern: Pattern) => void {
  let newest: Pattern | null = null;
  let running: Running | null = null;
  let last: WorkedOut | null = null;
  const isLong = ({ began }: Running) => performance.now() - began > LONG;

  const begin = (pattern: Pattern) => {
    newest = null;
    const one: Running = { pattern, began: performance.now(), stop: new AbortController() };
    running = one;
    const settle = (say: () => void) => {
      if (running !== one) return;
      running = null;
      say();
      if (newest !== null) begin(newest);
    };
    const progress = (step: Step) => {
      if (running === one && isLong(one)) heard.step(step);
    };
    away('workOut', [pattern], { signal: one.stop.signal, progress })
      .then((worked) => {
        // What an act left as it was stays the very thing it was, so that no view draws it again.
        last = keepSame(last, worked);
        return inAMoment(last);
      })
      .then(
        (worked) => settle(() => heard.done(ofPattern(worked, pattern))),
        (thrown: unknown) => settle(() => heard.failed(thrown)),
      );
  };
  return (pattern) => {
    newest = pattern;
    if (running === null) begin(pattern);
    else if (isLong(running) || running.pattern.id !== pattern.id) {
      running.stop.abort();
      begin(pattern);
    }
  };
}

/** Reading a large answer and showing it are two tasks of the window, so that the hand can come between them. */
function inAMoment<T>(answer: T): Promise<T> {
  return new Promise((go) => setTimeout(go, 0, answer));
}

/** What came back as a copy, about the very pattern that was asked for. */
function ofPattern(worked: WorkedOut, pattern: Pattern): WorkedOut {
  const own = new Map(pattern.sizes.map((size) => [size.id, size]));
  const sizes = worked.sizes.map((one) => ({ ...one, size: own.get(one.size.id) ?? one.size }));
  return { ...worked, pattern, sizes };
}
