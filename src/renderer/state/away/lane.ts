import type { AwayWishes } from './away.ts';
import type { JobName } from './jobs.ts';
import type { FromThread, ToThread } from './messages.ts';

/** A thread as the window holds it. */
export interface Thread {
  send(message: ToThread): void;
  end(): void;
}

/** Begins a thread: its messages, and that it broke down or never began. */
export type BeginThread = (hear: (message: FromThread) => void, broke: (words: string) => void) => Thread;

/** So long a stopped job may go on to its next step before its thread is ended, milliseconds. */
const GRACE = 400;

interface Waiting {
  readonly message: Extract<ToThread, { kind: 'do' }>;
  readonly wishes: AwayWishes;
  readonly finish: (answer: unknown) => void;
  readonly fail: (why: unknown) => void;
}

/**
 * One thread after another, each begun when it is first needed and kept. A job that is stopped and does not come to a next
 * step ends its thread; what waited behind it is begun again on a fresh one.
 */
export class Lane {
  readonly #begin: BeginThread;
  readonly #waiting = new Map<number, Waiting>();
  /** Jobs that were stopped and have not said yet that they did. */
  readonly #stopping = new Map<number, ReturnType<typeof setTimeout>>();
  #thread: Thread | null = null;
  #numbers = 0;

  constructor(begin: BeginThread) {
    this.#begin = begin;
  }

  ask(name: JobName, args: readonly unknown[], wishes: AwayWishes): Promise<unknown> {
    return new Promise((finish, fail) => {
      const { signal } = wishes;
      if (signal?.aborted === true) return fail(signal.reason);
      this.#numbers += 1;
      const message = { kind: 'do', number: this.#numbers, name, args } as const;
      this.#waiting.set(message.number, { message, wishes, finish, fail });
      signal?.addEventListener('abort', () => this.#stop(message.number), { once: true });
      this.#send(message);
    });
  }

  #send(message: ToThread): void {
    this.#thread ??= this.#begin(
      (heard) => this.#hear(heard),
      (words) => this.#broke(words),
    );
    this.#thread.send(message);
  }

  #hear(heard: FromThread): void {
    const { number } = heard;
    const one = this.#waiting.get(number);
    if (heard.kind === 'step') {
      one?.wishes.progress?.(heard.step);
      return;
    }
    clearTimeout(this.#stopping.get(number));
    this.#stopping.delete(number);
    this.#waiting.delete(number);
    if (heard.kind === 'done') one?.finish(heard.answer);
    else if (heard.kind === 'broken') one?.fail(new Error(heard.words, { cause: heard.trace }));
  }

  #stop(number: number): void {
    const one = this.#waiting.get(number);
    if (one === undefined) return;
    this.#waiting.delete(number);
    this.#thread?.send({ kind: 'stop', number });
    this.#stopping.set(
      number,
      setTimeout(() => this.#endThread(), GRACE),
    );
    one.fail(one.wishes.signal?.reason);
  }

  #endThread(): void {
    this.#thread?.end();
    this.#thread = null;
    for (const timer of this.#stopping.values()) clearTimeout(timer);
    this.#stopping.clear();
    for (const { message } of this.#waiting.values()) this.#send(message);
  }

  #broke(words: string): void {
    const all = [...this.#waiting.values()];
    this.#waiting.clear();
    this.#endThread();
    for (const { fail } of all) fail(new Error(words));
  }
}
