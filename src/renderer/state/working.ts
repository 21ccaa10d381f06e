import type { Pattern } from '../../shared/pattern/schema.ts';
import type { WorkedOut } from '../../shared/workroom/workedOut.ts';

export type WorkOut = (pattern: Pattern) => WorkedOut;

/** Runs something once the screen has shown what the hand just did. */
export type Later = (run: () => void) => void;

/** After the next picture, so that a control answers before the sums begin; at once when the window is not shown. */
const afterPaint: Later = (run) => {
  if (document.hidden) setTimeout(run, 0);
  else requestAnimationFrame(() => setTimeout(run, 0));
};

export interface Heard {
  readonly done: (worked: WorkedOut) => void;
  readonly failed: (thrown: unknown) => void;
}

/** Sums that took longer than this wait until the hand rests: the screen must not stand still between two acts. Milliseconds. */
const LONG = 200;
/** How long a hand rests before long sums begin, milliseconds. */
const REST = 350;

/**
 * Works patterns out one after another, a little later than asked. Only the newest pattern asked for is worked out; the
 * answer before it stands until then. While the sums are long, they begin once nothing has been asked for a moment.
 */
export function workingBy(workOut: WorkOut, heard: Heard, later: Later = afterPaint): (pattern: Pattern) => void {
  let newest: Pattern | null = null;
  let took = 0;
  let rest: ReturnType<typeof setTimeout> | undefined;
  const run = () => {
    const pattern = newest;
    newest = null;
    if (pattern === null) return;
    const began = performance.now();
    try {
      heard.done(workOut(pattern));
    } catch (thrown) {
      heard.failed(thrown);
    }
    took = performance.now() - began;
  };
  return (pattern) => {
    const idle = newest === null;
    newest = pattern;
    if (took > LONG) {
      clearTimeout(rest);
      rest = setTimeout(() => later(run), REST);
    } else if (idle) later(run);
  };
}
