import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { workingBy } from '../../src/renderer/state/working.ts';
import type { Pattern } from '../../src/shared/pattern/schema.ts';
import type { WorkedOut } from '../../src/shared/workroom/workedOut.ts';
import { smallPattern } from './pattern.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

/** Sums that take so long, and what was worked out. */
function sums(milliseconds: number) {
  const worked: string[] = [];
  const workOut = (pattern: Pattern): WorkedOut => {
    vi.setSystemTime(Date.now() + milliseconds);
    vi.advanceTimersByTime(milliseconds);
    worked.push(pattern.title);
    return { pattern } as WorkedOut;
  };
  const ask = workingBy(workOut, { done: () => undefined, failed: () => undefined }, (run) => setTimeout(run, 0));
  return { worked, ask: (title: string) => ask(smallPattern({ title })) };
}

test('quick sums are made for every act', () => {
  const { worked, ask } = sums(5);
  for (const title of ['a', 'b']) {
    ask(title);
    vi.advanceTimersByTime(1);
  }
  expect(worked).toEqual(['a', 'b']);
});

test('of acts in a row only the newest is worked out', () => {
  const { worked, ask } = sums(5);
  ask('a');
  ask('b');
  vi.advanceTimersByTime(1);
  expect(worked).toEqual(['b']);
});

test('long sums wait until the hand rests, and then are made', () => {
  const { worked, ask } = sums(900);
  ask('a');
  vi.advanceTimersByTime(1);
  for (const title of ['b', 'c', 'd']) {
    ask(title);
    vi.advanceTimersByTime(100);
  }
  expect(worked).toEqual(['a']);
  vi.advanceTimersByTime(1000);
  expect(worked).toEqual(['a', 'd']);
});
