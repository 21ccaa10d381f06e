import type { Contract } from '../../shared/contract.ts';
import type { Pattern } from '../../shared/pattern/schema.ts';
import type { Away } from './away/away.ts';
import { type History, opened } from './history.ts';
import { Keeper } from './keeper.ts';
import type { Notes } from './notes.ts';
import { WHOLE_PATTERN } from './selection.ts';
import type { StudioStore } from './studioState.ts';
import { workingBy } from './working.ts';

export interface DocumentNeeds {
  readonly host: Contract;
  readonly store: StudioStore;
  readonly notes: Notes;
  readonly away: Away;
}

/** The document on the table: kept, worked out and shown together, so that none of the three falls behind unseen. */
export class OpenDocument {
  readonly #needs: DocumentNeeds;
  readonly #work: (pattern: Pattern) => void;
  #keeper: Keeper;

  constructor(needs: DocumentNeeds) {
    const { store, notes } = needs;
    this.#needs = needs;
    this.#keeper = new Keeper(needs.host.savePattern, null, () => undefined);
    this.#work = workingBy(needs.away, {
      done: (worked) =>
        store.setState(({ history }) => {
          if (history?.now.id !== worked.pattern.id) return {};
          return { worked, working: history.now !== worked.pattern, step: null };
        }),
      failed: (thrown) => {
        store.setState({ working: false, step: null });
        notes.sayWhy(thrown);
      },
      step: (step) => store.setState({ step }),
    });
  }

  get keeper(): Keeper {
    return this.#keeper;
  }

  /** Puts a document on the table; `revision` is the one on disk, null when it is on none. */
  begin(pattern: Pattern, revision: number | null): void {
    const { host, store } = this.#needs;
    // What becomes of a document that has left the table is not said of the one that lies there.
    const keeper: Keeper = new Keeper(host.savePattern, revision, (kept) => {
      if (this.#keeper !== keeper) return;
      store.setState({ kept });
      if (kept.state === 'kept') this.#needs.notes.hostIsBack();
    });
    this.#keeper = keeper;
    store.setState({
      history: opened(pattern),
      kept: { state: 'kept' },
      size: pattern.sizes[0]?.id ?? null,
      compare: false,
      selection: WHOLE_PATTERN,
      pointed: null,
      worked: null,
      working: true,
      step: null,
      closed: null,
    });
    this.#work(pattern);
    if (revision === null) this.#keeper.keep(pattern);
  }

  /** Changes the document by its history: shown at once, then kept and worked out. */
  change(step: (history: History) => History): void {
    const { store } = this.#needs;
    const { history } = store.getState();
    const next = history === null ? null : step(history);
    if (next === null || next === history) return;
    store.setState({ history: next, working: true });
    this.#keeper.keep(next.now);
    this.#work(next.now);
  }

  /** Whether the document may leave the table: it is on disk, or there is none. Says so when it may not. */
  async mayGo(): Promise<boolean> {
    const { store, notes } = this.#needs;
    await this.#keeper.settled();
    const { history } = store.getState();
    if (history === null || !this.#keeper.busy) return true;
    notes.say(`“${history.now.title}” is not kept yet, so it stays open.`, { tone: 'stops' });
    return false;
  }
}
