import type { Pattern } from '../../shared/pattern/schema.ts';
import type { Reader } from '../reader.ts';
import { Refused } from '../refusal.ts';
import type { Store } from '../store/store.ts';
import { gone, sound } from './documents.ts';

type Revised = { readonly revision: number };

/** The calls of the contract that keep and find patterns, for inputs that have been checked. */
export interface Library {
  first(): string;
  openPattern(id: string): Pattern;
  lookAtPattern(id: string): Pattern;
  savePattern(request: { readonly pattern: Pattern; readonly revision: number | null }): Revised;
  removePattern(id: string): void;
}

export function makeLibrary(store: Store, reader: Reader): Library {
  return {
    first: () => firstToOpen(store),
    openPattern(id) {
      const pattern = readPattern(store, reader, id);
      remember(store, id);
      return pattern;
    },
    lookAtPattern: (id) => readPattern(store, reader, id),
    savePattern: (request) => savePattern(store, request),
    removePattern(id) {
      if (!store.patterns.remove(id)) throw gone('pattern', id);
    },
  };
}

function readPattern(store: Store, reader: Reader, id: string): Pattern {
  const kept = store.patterns.read(id);
  if (kept === null) throw gone('pattern', id);
  return sound(reader.pattern(kept.body));
}

/** The last one open, or the demo, or the last changed; empty when no pattern is kept. */
function firstToOpen({ patterns, settings, starters }: Store): string {
  const last = settings.read('last-open');
  if (last !== null && patterns.has(last)) return last;
  return starters.demo() ?? patterns.cards()[0]?.id ?? '';
}

/** Not worth failing an opening for: on a full disk a pattern can still be read. */
function remember(store: Store, id: string): void {
  try {
    store.settings.write('last-open', id);
  } catch {
    // The next start opens on another pattern; nothing is lost.
  }
}

function savePattern(store: Store, request: { readonly pattern: Pattern; readonly revision: number | null }): Revised {
  const { pattern, revision } = request;
  const saved = store.patterns.save(pattern, revision);
  if ('revision' in saved) {
    if (revision === null) remember(store, pattern.id);
    return saved;
  }
  if (saved.refused === 'removed') {
    throw new Refused('not-found', `“${pattern.title}” was removed from the library in another window.`);
  }
  throw new Refused(
    'changed-elsewhere',
    `“${pattern.title}” was changed in another window after it was opened here. Nothing was overwritten.`,
  );
}
