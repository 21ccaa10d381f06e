import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { Away, AwayWishes } from '../../src/renderer/state/away/away.ts';
import { workingBy } from '../../src/renderer/state/working.ts';
import type { Pattern } from '../../src/shared/pattern/schema.ts';
import type { WorkedOut } from '../../src/shared/workroom/workedOut.ts';
import { smallPattern } from './pattern.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

/** Sums that take so long on a thread of their own, telling a step every 50 ms: which were begun, done and dropped. */
function sums(milliseconds: number) {
  const begun: string[] = [];
  const done: string[] = [];
  const steps: string[] = [];
  const onThread = (pattern: Pattern, { signal, progress }: AwayWishes) =>
    new Promise<WorkedOut>((finish, fail) => {
      begun.push(pattern.title);
      const telling = setInterval(() => progress?.({ doing: pattern.title, done: 1, of: 2 }), 50);
      const ending = setTimeout(() => {
        clearInterval(telling);
        // As a copy, as everything that comes from a thread.
        finish(structuredClone({ pattern, blocks: [], sizes: [], findings: [] }) as unknown as WorkedOut);
      }, milliseconds);
      signal?.addEventListener('abort', () => {
        clearInterval(telling);
        clearTimeout(ending);
        fail(signal.reason);
      });
    });
  const away = ((_: string, [pattern]: [Pattern], wishes: AwayWishes) => onThread(pattern, wishes)) as Away;
  const heard = {
    done: (worked: WorkedOut) => void done.push(worked.pattern.title),
    failed: (thrown: unknown) => void done.push(`failed: ${String(thrown)}`),
    step: ({ doing }: { doing: string }) => void steps.push(doing),
  };
  const work = workingBy(away, heard);
  return { begun, done, steps, heard, ask: (title: string, id = 'low-tide') => work(smallPattern({ title, id })) };
}

test('quick sums are made for every act', async () => {
  const { done, ask } = sums(5);
  for (const title of ['a', 'b']) {
    ask(title);
    await vi.advanceTimersByTimeAsync(10);
  }
  expect(done).toEqual(['a', 'b']);
});

test('of acts in a row the newest is worked out next, and the one that runs is left to end', async () => {
  const { done, ask } = sums(50);
  for (const title of ['a', 'b', 'c']) ask(title);
  await vi.advanceTimersByTimeAsync(200);
  expect(done).toEqual(['a', 'c']);
});

test('long sums are dropped for a newer act', async () => {
  const { begun, done, ask } = sums(900);
  ask('a');
  await vi.advanceTimersByTimeAsync(500);
  ask('b');
  await vi.advanceTimersByTimeAsync(2000);
  expect(begun).toEqual(['a', 'b']);
  expect(done).toEqual(['b']);
});

test('another pattern does not wait for the one that has left the table', async () => {
  const { done, ask } = sums(300);
  ask('a');
  ask('b', 'spring-tide');
  await vi.advanceTimersByTimeAsync(1000);
  expect(done).toEqual(['b']);
});

test('only long sums say how far they are', async () => {
  const quick = sums(300);
  quick.ask('a');
  await vi.advanceTimersByTimeAsync(1000);
  expect(quick.steps).toEqual([]);
  const long = sums(600);
  long.ask('a');
  await vi.advanceTimersByTimeAsync(1000);
  expect(long.steps.length).toBeGreaterThan(0);
});

test('the copy that comes back is about the very pattern that was asked for', async () => {
  const { heard, ask } = sums(5);
  const pattern = smallPattern();
  const done = vi.fn();
  const work = workingBy(
    (async (_: string, [asked]: [Pattern]) => {
      const size = asked.sizes[0];
      return structuredClone({ pattern: asked, blocks: [], sizes: [{ size }], findings: [] });
    }) as unknown as Away,
    { ...heard, done },
  );
  work(pattern);
  await vi.advanceTimersByTimeAsync(5);
  const worked = done.mock.calls[0]?.[0] as WorkedOut;
  expect(worked.pattern).toBe(pattern);
  expect(worked.sizes[0]?.size).toBe(pattern.sizes[0]);
  ask('a');
});
