import { freeId } from '../../shared/pattern/edits/list.ts';
import type { Pattern } from '../../shared/pattern/schema.ts';
import type { DocumentNeeds, OpenDocument } from './document.ts';
import { refusalOf } from './host.ts';
import { AT_FIRST } from './studioState.ts';

export interface Shelving {
  /** Opens what was last open; the finished demo at the first start. */
  start(): Promise<void>;
  /** Opens a kept pattern; the one open now is on disk first. Answers whether it is open. */
  open(id: string): Promise<boolean>;
  /** Keeps a pattern that is on no disk yet, and opens it. */
  openFresh(pattern: Pattern): Promise<boolean>;
  /** Puts the open pattern away without opening another: the library is shown. */
  close(): Promise<void>;
  /** Tries again to keep what the disk refused; over what another window kept, when told so. */
  keepAgain(over?: boolean): Promise<void>;
  /** Keeps the open pattern as a copy beside what another window kept, and goes on with the copy. */
  keepBoth(): Promise<void>;
}

/** Patterns from the shelf to the table and back. */
export function shelvingOf(document: OpenDocument, { host, store, notes }: DocumentNeeds): Shelving {
  const { setState: set, getState: get } = store;

  const revisionOf = async (id: string): Promise<number | null> =>
    (await host.patterns()).find((card) => card.id === id)?.revision ?? null;

  const fetchAndBegin = async (id: string): Promise<void> => {
    // The revision is asked for first: a change made in between is then refused at the first save, never lost.
    const revision = await revisionOf(id);
    document.begin(await host.openPattern(id), revision);
  };

  return {
    async start() {
      try {
        const about = await host.about();
        set({ about });
        if (about.first === '') set({ view: 'library' });
        else await fetchAndBegin(about.first);
      } catch (thrown) {
        set({ closed: refusalOf(thrown) });
      }
    },
    async open(id) {
      if (!(await document.mayGo())) return false;
      try {
        await fetchAndBegin(id);
        return true;
      } catch (thrown) {
        notes.sayWhy(thrown);
        return false;
      }
    },
    async openFresh(pattern) {
      if (!(await document.mayGo())) return false;
      document.begin(pattern, null);
      return true;
    },
    async close() {
      await document.keeper.settled();
      document.keeper.stop();
      set({ ...AT_FIRST, about: get().about, notes: get().notes, view: 'library' });
    },
    async keepAgain(over = false) {
      const { history } = get();
      if (history === null) return;
      try {
        document.keeper.tryAgain(over ? { revision: await revisionOf(history.now.id) } : undefined);
        await document.keeper.settled();
      } catch (thrown) {
        notes.sayWhy(thrown);
      }
    },
    async keepBoth() {
      const pattern = get().history?.now;
      if (pattern === undefined) return;
      try {
        const taken = (await host.patterns()).map(({ id }) => id);
        const title = `${pattern.title}, a copy`;
        document.keeper.stop();
        document.begin({ ...pattern, id: freeId(title, taken), title }, null);
      } catch (thrown) {
        notes.sayWhy(thrown);
      }
    },
  };
}
