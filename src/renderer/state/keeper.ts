import type { Contract, Refusal } from '../../shared/contract.ts';
import type { Pattern } from '../../shared/pattern/schema.ts';
import { refusalOf } from './host.ts';

/** Whether what is on screen is on disk. */
export type Kept =
  | { readonly state: 'kept' }
  | { readonly state: 'keeping' }
  | { readonly state: 'refused'; readonly refusal: Refusal };

const KEPT: Kept = { state: 'kept' };
const KEEPING: Kept = { state: 'keeping' };

/** Waits before a refused save is tried again by itself, milliseconds. */
const PATIENCE = 4000;

/**
 * Puts every edit on disk, one save at a time. While one is on its way only the newest document waits, so a fast hand
 * never queues up work. A refusal keeps the document in hand and is tried again after a while and with the next edit.
 */
export class Keeper {
  readonly #save: Contract['savePattern'];
  readonly #tell: (kept: Kept) => void;
  #revision: number | null;
  #waiting: Pattern | null = null;
  #saving: Promise<void> | null = null;
  #again: ReturnType<typeof setTimeout> | undefined;
  #stopped = false;

  constructor(save: Contract['savePattern'], revision: number | null, tell: (kept: Kept) => void) {
    this.#save = save;
    this.#revision = revision;
    this.#tell = (kept) => {
      if (!this.#stopped) tell(kept);
    };
  }

  /** Keeps this document, now or as soon as the one on its way is down. */
  keep(pattern: Pattern): void {
    this.#waiting = pattern;
    this.#tell(KEEPING);
    this.#saving ??= this.#drain();
  }

  /** Whether anything is not on disk yet. */
  get busy(): boolean {
    return this.#waiting !== null || this.#saving !== null;
  }

  /** Resolves once everything is on disk or has been refused. */
  async settled(): Promise<void> {
    while (this.#saving !== null) await this.#saving;
  }

  /** Tries the refused document again at once, over a newer revision on disk when told so. */
  tryAgain(over?: { readonly revision: number | null }): void {
    if (over !== undefined) this.#revision = over.revision;
    if (this.#waiting !== null) this.keep(this.#waiting);
  }

  /** Stops trying and telling; what is on its way may still arrive. */
  stop(): void {
    this.#stopped = true;
    clearTimeout(this.#again);
    this.#waiting = null;
  }

  async #drain(): Promise<void> {
    clearTimeout(this.#again);
    for (let pattern = this.#waiting; pattern !== null; pattern = this.#waiting) {
      const refusal = await this.#put(pattern);
      if (refusal === null) continue;
      this.#refused(refusal);
      return;
    }
    this.#saving = null;
    this.#tell(KEPT);
  }

  async #put(pattern: Pattern): Promise<Refusal | null> {
    this.#waiting = null;
    try {
      const { revision } = await this.#save({ pattern, revision: this.#revision });
      this.#revision = revision;
      return null;
    } catch (thrown) {
      if (!this.#stopped) this.#waiting ??= pattern;
      return refusalOf(thrown);
    }
  }

  #refused(refusal: Refusal): void {
    this.#saving = null;
    this.#tell({ state: 'refused', refusal });
    const byItself = !this.#stopped && (refusal.kind === 'no-room' || refusal.kind === 'broken');
    if (byItself) this.#again = setTimeout(() => this.tryAgain(), PATIENCE);
  }
}
