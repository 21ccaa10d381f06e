import type { Edit } from '../../shared/pattern/edit.ts';
import type { Pattern } from '../../shared/pattern/schema.ts';

/** How many acts can be taken back. */
const LONGEST = 500;

/** A document on one side of an act, with the act's name: "widen outer border". */
interface Remembered {
  readonly name: string;
  readonly pattern: Pattern;
  /** Acts in a row with the same mark, such as the moves of one drag, are taken back as one. */
  readonly mark?: string;
}

/** An open document and the acts that can be taken back or made again; the last of each list is the nearest. */
export interface History {
  readonly now: Pattern;
  readonly undo: readonly Remembered[];
  readonly redo: readonly Remembered[];
}

/** A document that has just been opened. */
export function opened(pattern: Pattern): History {
  return { now: pattern, undo: [], redo: [] };
}

/** The history after an act. An act that changes nothing leaves it as it was. */
export function acted<Args>(history: History, edit: Edit<Args>, args: Args, mark?: string): History {
  const next = edit.apply(history.now, args);
  if (next === history.now) return history;
  const last = history.undo.at(-1);
  const name = edit.name(args, history.now);
  if (mark !== undefined && last?.mark === mark) {
    return { now: next, undo: [...history.undo.slice(0, -1), { ...last, name }], redo: [] };
  }
  const remembered = { name, pattern: history.now, ...(mark === undefined ? {} : { mark }) };
  return { now: next, undo: [...history.undo, remembered].slice(-LONGEST), redo: [] };
}

/** The history with the last act taken back. */
export function undone(history: History): History {
  const last = history.undo.at(-1);
  if (last === undefined) return history;
  const redo = [...history.redo, { name: last.name, pattern: history.now }];
  return { now: last.pattern, undo: history.undo.slice(0, -1), redo };
}

/** The history with the last act that was taken back made again. */
export function redone(history: History): History {
  const last = history.redo.at(-1);
  if (last === undefined) return history;
  const undo = [...history.undo, { name: last.name, pattern: history.now }];
  return { now: last.pattern, undo, redo: history.redo.slice(0, -1) };
}
