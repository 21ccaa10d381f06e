import { createStore, type StoreApi } from 'zustand/vanilla';
import type { About, Contract, Refusal } from '../../shared/contract.ts';
import type { Finding } from '../../shared/measure/finding.ts';
import type { Edit } from '../../shared/pattern/edit.ts';
import { freeId } from '../../shared/pattern/edits/list.ts';
import type { Pattern } from '../../shared/pattern/schema.ts';
import type { WorkedOut } from '../../shared/workroom/workedOut.ts';
import { destinationOf } from './destination.ts';
import { acted, type History, opened, redone, undone } from './history.ts';
import { refusalOf } from './host.ts';
import { Keeper, type Kept } from './keeper.ts';
import { type Selection, WHOLE_PATTERN } from './selection.ts';
import type { ViewId } from './viewId.ts';
import { type Later, type WorkOut, workingBy } from './working.ts';

/** A short word at the edge of the window about something that was done, perhaps with a way back. */
export interface Note {
  readonly id: number;
  readonly words: string;
  readonly tone: 'quiet' | 'stops';
  readonly act?: { readonly label: string; readonly run: () => void };
}

export interface StudioState {
  readonly about: About | null;
  /** The open pattern and what can be taken back; null before the first pattern is open. */
  readonly history: History | null;
  readonly kept: Kept;
  readonly view: ViewId;
  /** Id of the size looked at. */
  readonly size: string | null;
  /** True when all sizes are looked at side by side. */
  readonly compare: boolean;
  readonly selection: Selection;
  /** The finding the designer has just gone to, so that its place can be shown. */
  readonly pointed: Finding | null;
  /** What follows from the open pattern, or from the one a moment before while it is being worked out. */
  readonly worked: WorkedOut | null;
  readonly working: boolean;
  readonly notes: readonly Note[];
  /** Why nothing could be opened, when nothing could. */
  readonly closed: Refusal | null;
  /** Which dialog of the frame is open. */
  readonly dialog: 'commands' | 'settings' | null;
}

const AT_FIRST: StudioState = {
  about: null,
  history: null,
  kept: { state: 'kept' },
  view: 'quilt',
  size: null,
  compare: false,
  selection: WHOLE_PATTERN,
  pointed: null,
  worked: null,
  working: false,
  notes: [],
  closed: null,
  dialog: null,
};

/** Everything the window can do to what it shows; views and commands call these, never the store. */
export interface Studio {
  readonly host: Contract;
  readonly store: StoreApi<StudioState>;
  /** Opens what was last open; the finished demo at the first start. */
  start(): Promise<void>;
  /** Opens a kept pattern; the one open now is on disk first. Answers whether it is open. */
  open(id: string): Promise<boolean>;
  /** Keeps a pattern that is on no disk yet, and opens it. */
  openFresh(pattern: Pattern): Promise<boolean>;
  /** Puts the open pattern away without opening another: the library is shown. */
  close(): Promise<void>;
  /** Does an edit. Acts in a row with the same mark are taken back as one. */
  act<Args>(edit: Edit<Args>, args: Args, mark?: string): void;
  undo(): void;
  redo(): void;
  show(view: ViewId): void;
  chooseSize(size: string): void;
  compareSizes(on: boolean): void;
  select(selection: Selection): void;
  /** Goes where a finding is: its view, its size, its thing. */
  goTo(finding: Finding): void;
  say(words: string, more?: Partial<Pick<Note, 'tone' | 'act'>>): void;
  unsay(id: number): void;
  openDialog(dialog: StudioState['dialog']): void;
  /** Tries again to keep what the disk refused; over what another window kept, when told so. */
  keepAgain(over?: boolean): Promise<void>;
  /** Keeps the open pattern as a copy beside what another window kept, and goes on with the copy. */
  keepBoth(): Promise<void>;
}

export interface StudioNeeds {
  readonly host: Contract;
  readonly workOut: WorkOut;
  readonly later?: Later;
}

/** Makes the one studio of a window. */
export function createStudio({ host, workOut, later }: StudioNeeds): Studio {
  const store = createStore<StudioState>(() => AT_FIRST);
  const { setState: set, getState: get } = store;
  let keeper = new Keeper(host.savePattern, null, () => undefined);
  let notes = 0;

  const work = workingBy(
    workOut,
    {
      done: (worked) => set({ worked, working: get().history?.now !== worked.pattern }),
      failed: (thrown) => {
        set({ working: false });
        say(refusalOf(thrown).words, { tone: 'stops' });
      },
    },
    later,
  );

  const say: Studio['say'] = (words, more = {}) => {
    notes += 1;
    const note: Note = { id: notes, words, tone: 'quiet', ...more };
    set(({ notes: before }) => ({ notes: [...before.slice(-2), note] }));
  };

  const moveTo = (history: History) => {
    if (history === get().history) return;
    set({ history, working: true });
    keeper.keep(history.now);
    work(history.now);
  };

  const letGo = async (): Promise<boolean> => {
    await keeper.settled();
    const { history } = get();
    if (history === null || !keeper.busy) return true;
    say(`“${history.now.title}” is not kept yet, so it stays open.`, { tone: 'stops' });
    return false;
  };

  const begin = (pattern: Pattern, revision: number | null) => {
    keeper = new Keeper(host.savePattern, revision, (kept) => set({ kept }));
    set({
      history: opened(pattern),
      kept: { state: 'kept' },
      size: pattern.sizes[0]?.id ?? null,
      compare: false,
      selection: WHOLE_PATTERN,
      pointed: null,
      worked: null,
      working: true,
      closed: null,
    });
    work(pattern);
  };

  const revisionOf = async (id: string): Promise<number | null> =>
    (await host.patterns()).find((card) => card.id === id)?.revision ?? null;

  const open = async (id: string): Promise<boolean> => {
    if (!(await letGo())) return false;
    try {
      // The revision is asked for first: a change made in between is then refused at the first save, never lost.
      const revision = await revisionOf(id);
      begin(await host.openPattern(id), revision);
      return true;
    } catch (thrown) {
      say(refusalOf(thrown).words, { tone: 'stops' });
      return false;
    }
  };

  return {
    host,
    store,
    open,
    say,
    async start() {
      try {
        const about = await host.about();
        set({ about });
        if (about.first === '') {
          set({ view: 'library' });
          return;
        }
        const revision = await revisionOf(about.first);
        begin(await host.openPattern(about.first), revision);
      } catch (thrown) {
        set({ closed: refusalOf(thrown) });
      }
    },
    async openFresh(pattern) {
      if (!(await letGo())) return false;
      begin(pattern, null);
      keeper.keep(pattern);
      return true;
    },
    async close() {
      await keeper.settled();
      keeper.stop();
      set({ ...AT_FIRST, about: get().about, notes: get().notes, view: 'library' });
    },
    act(edit, args, mark) {
      const { history } = get();
      if (history !== null) moveTo(acted(history, edit, args, mark));
    },
    undo() {
      const { history } = get();
      if (history !== null) moveTo(undone(history));
    },
    redo() {
      const { history } = get();
      if (history !== null) moveTo(redone(history));
    },
    show: (view) => set({ view }),
    chooseSize: (size) => set({ size, compare: false }),
    compareSizes: (compare) => set({ compare }),
    select: (selection) => set({ selection, pointed: null }),
    goTo(finding) {
      const { history } = get();
      if (history === null) return;
      const { view, size, selection } = destinationOf(finding, history.now);
      set({ view, selection, pointed: finding, ...(size === undefined ? {} : { size, compare: false }) });
    },
    unsay: (id) => set(({ notes: before }) => ({ notes: before.filter((note) => note.id !== id) })),
    openDialog: (dialog) => set({ dialog }),
    async keepAgain(over = false) {
      const { history } = get();
      if (history === null) return;
      keeper.tryAgain(over ? { revision: await revisionOf(history.now.id) } : undefined);
      await keeper.settled();
    },
    async keepBoth() {
      const pattern = get().history?.now;
      if (pattern === undefined) return;
      try {
        const taken = (await host.patterns()).map(({ id }) => id);
        const title = `${pattern.title}, a copy`;
        const copy = { ...pattern, id: freeId(title, taken), title };
        keeper.stop();
        begin(copy, null);
        keeper.keep(copy);
      } catch (thrown) {
        say(refusalOf(thrown).words, { tone: 'stops' });
      }
    },
  };
}
