import { Refused } from '../refusal.ts';

/** What is thrown when the designer stopped the making. */
function stopped(): Refused {
  return new Refused('stopped', 'Stopped before the PDF was finished. Nothing was written.');
}

const BREATH = 12;

/**
 * Lets the rest of the program have its turn now and then (each 12 ms at most), so that progress is seen and a stop is
 * heard while a book is made.
 * @throws Refused `stopped` when the signal says so
 */
export function breather(signal: AbortSignal | undefined): () => Promise<void> {
  let last = performance.now();
  return async () => {
    if (performance.now() - last > BREATH) {
      await new Promise((resolve) => setImmediate(resolve));
      last = performance.now();
    }
    if (signal?.aborted) throw stopped();
  };
}
