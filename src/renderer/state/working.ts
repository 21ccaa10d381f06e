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

/**
 * Works patterns out one after another, a little later than asked. Only the newest pattern asked for is worked out; the
 * answer before it stands until then.
 */
export function workingBy(workOut: WorkOut, heard: Heard, later: Later = afterPaint): (pattern: Pattern) => void {
  let newest: Pattern | null = null;
  const run = () => {
    const pattern = newest;
    newest = null;
    if (pattern === null) return;
    try {
      heard.done(workOut(pattern));
    } catch (thrown) {
      heard.failed(thrown);
    }
  };
  return (pattern) => {
    const idle = newest === null;
    newest = pattern;
    if (idle) later(run);
  };
}
