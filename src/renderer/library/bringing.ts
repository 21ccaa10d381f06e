import { createStore, useStore } from 'zustand';
import type { Imported } from '../../shared/contract.ts';
import { refusalOf } from '../state/host.ts';
import type { Studio } from '../state/studio.ts';
import { type HowFar, untilDone } from '../state/untilDone.ts';
import { type Outcome, sayWhatCame } from './bringingWords.ts';

/** Files that are being brought into the library. */
export interface Bringing extends HowFar {
  /** The file that is being read, and which of how many it is. */
  readonly file: string;
  readonly number: number;
  readonly of: number;
  readonly stop: () => void;
}

/** It goes on while other views are looked at. */
const bringingStore = createStore<{ readonly now: Bringing | null }>(() => ({ now: null }));

/** What is being brought in; null while nothing is. */
export function useBringing(): Bringing | null {
  return useStore(bringingStore, ({ now }) => now);
}

let last: Promise<void> = Promise.resolve();

/**
 * Brings files in one after another, recipes first, and says what came of them. Each is kept whole or not at all; when the
 * designer stops it, those before stay. Files chosen meanwhile wait for these.
 */
export function bringFiles(studio: Studio, files: readonly File[], onCame: (came: Imported) => void): Promise<void> {
  last = last.then(() => bringAll(studio, files, onCame));
  return last;
}

async function bringAll(studio: Studio, chosen: readonly File[], onCame: (came: Imported) => void): Promise<void> {
  const files = [...chosen].sort((a, b) => Number(isRecipe(b)) - Number(isRecipe(a)));
  const stopping = new AbortController();
  const texts = new Map<File, Promise<string>>();
  const textOf = (file: File) => {
    const text = texts.get(file) ?? file.text();
    texts.set(file, text);
    return text;
  };
  const outcomes: Outcome[] = [];
  for (const [i, file] of files.entries()) {
    if (stopping.signal.aborted) break;
    const tell = (howFar: HowFar) => {
      const { name } = file;
      const now = { ...howFar, file: name, number: i + 1, of: files.length, stop: () => stopping.abort() };
      bringingStore.setState({ now });
    };
    const outcome = await bringOne(studio, file, await besides(file, files, textOf), stopping.signal, tell);
    outcomes.push(outcome);
    if ('came' in outcome) onCame(outcome.came);
  }
  bringingStore.setState({ now: null });
  sayWhatCame(studio, outcomes, files.length);
}

async function bringOne(
  { host }: Studio,
  file: File,
  beside: Readonly<Record<string, string>> | undefined,
  signal: AbortSignal,
  tell: (howFar: HowFar) => void,
): Promise<Outcome> {
  tell({ progress: 0, doing: 'Reading the file' });
  try {
    const { job } = await host.bringIn({ name: file.name, text: await file.text(), ...(beside && { beside }) });
    await untilDone(host, job, { signal, tell, stopped: `Nothing of ${file.name} was kept.` });
    return { file: file.name, came: await host.broughtIn(job) };
  } catch (thrown) {
    return { file: file.name, refusal: refusalOf(thrown) };
  }
}

/** A pattern may need recipe files that were chosen along with it. */
async function besides(
  file: File,
  all: readonly File[],
  textOf: (file: File) => Promise<string>,
): Promise<Readonly<Record<string, string>> | undefined> {
  const recipes = isRecipe(file) ? [] : all.filter((other) => other !== file && isRecipe(other));
  if (recipes.length === 0) return undefined;
  return Object.fromEntries(await Promise.all(recipes.map(async (one) => [one.name, await textOf(one)] as const)));
}

function isRecipe({ name }: File): boolean {
  return name.endsWith('.recipe.json');
}
