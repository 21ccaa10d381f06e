import { expect, test } from 'vitest';
import { bookReader } from '../../src/renderer/state/away/foldedBook.ts';
import { inLine } from '../../src/renderer/state/away/inLine.ts';
import { JOBS } from '../../src/renderer/state/away/jobs.ts';
import { keepSame } from '../../src/renderer/state/away/keepSame.ts';
import type { BeginThread } from '../../src/renderer/state/away/lane.ts';
import { onThreads } from '../../src/renderer/state/away/onThreads.ts';
import { threadOf } from '../../src/renderer/state/away/thread.ts';
import type { Figure } from '../../src/shared/diagrams/figure.ts';
import type { Step, Steps } from '../../src/shared/measure/steps.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import type { Section } from '../../src/shared/writing/book.ts';
import { writeBook } from '../../src/shared/writing/writeBook.ts';
import { demoPattern } from '../helpers/starters.ts';

type Work = Parameters<typeof threadOf>[0];

/** Threads of this same program, messages crossing as copies, and how many were begun and ended. */
function threads(jobs: Work = JOBS) {
  const count = { begun: 0, ended: 0 };
  const begin: BeginThread = (hear) => {
    count.begun += 1;
    let isAlive = true;
    const thread = threadOf(jobs, (message) => {
      const copy = structuredClone(message);
      setTimeout(() => isAlive && hear(copy), 0);
    });
    return {
      send: (message) => void setTimeout((copy) => isAlive && thread(copy), 0, structuredClone(message)),
      end: () => {
        isAlive = false;
        count.ended += 1;
      },
    };
  };
  return { away: onThreads(begin), count };
}

const wait = (milliseconds: number) => new Promise((go) => setTimeout(go, milliseconds));

test('what a thread answers is what the core answers, as data', async () => {
  const { away } = threads();
  const pattern = demoPattern();
  const asked = away('workOut', [pattern]);
  expect(await asked).toEqual(workOut(pattern));
  expect(await inLine()('workOut', [pattern])).toEqual(workOut(pattern));
});

test('steps are told before they begin: the blocks, then the sizes', async () => {
  const { away } = threads();
  const steps: Step[] = [];
  const asked = away('workOut', [demoPattern()], { progress: (step) => steps.push(step) });
  await asked;
  expect(steps[0]?.doing).toBe('Block A');
  expect(steps.map(({ done }) => done)).toEqual(steps.map((_, i) => i));
  expect(new Set(steps.map(({ of }) => of))).toEqual(new Set([steps.length]));
});

test('what a job throws comes back in its words', async () => {
  const { away } = threads({
    ...JOBS,
    findSizes: () => {
      throw new RangeError('a loose thread');
    },
  });
  const asked = expect(away('findSizes', [] as never)).rejects.toThrow('a loose thread');
  await asked;
});

/** A job that never comes to an end, but goes from step to step. */
function* endless(): Steps<never> {
  for (let done = 0; ; done++) {
    const until = performance.now() + 5;
    while (performance.now() < until);
    yield { doing: 'a long way', done, of: Number.POSITIVE_INFINITY };
  }
}

test('a job that is stopped is left at its next step, and its thread goes on with the next', async () => {
  const { away, count } = threads({ ...JOBS, findSizes: endless, recipeFacets: () => 'facets' });
  const stop = new AbortController();
  const stopped = expect(away('findSizes', [] as never, { signal: stop.signal })).rejects.toThrow('not wanted');
  const next = away('recipeFacets', [] as never);
  await wait(20);
  stop.abort(new Error('not wanted'));
  await stopped;
  expect(await next).toBe('facets');
  expect(count).toEqual({ begun: 1, ended: 0 });
});

test('a thread that comes to no next step is ended, and what waited behind it is begun on a fresh one', async () => {
  const count = { begun: 0, ended: 0 };
  // The first thread hears nothing, as one does whose job has no steps; the next answers.
  const away = onThreads((hear) => {
    count.begun += 1;
    const isDeaf = count.begun === 1;
    const thread = threadOf({ ...JOBS, recipeFacets: () => 'facets' }, hear);
    return {
      send: (message) => (isDeaf ? undefined : thread(message)),
      end: () => {
        count.ended += 1;
      },
    };
  });
  const stop = new AbortController();
  const stopped = expect(away('findSizes', [] as never, { signal: stop.signal })).rejects.toThrow('not wanted');
  const behind = away('recipeFacets', [] as never);
  stop.abort(new Error('not wanted'));
  await stopped;
  expect(await behind).toBe('facets');
  expect(count).toEqual({ begun: 2, ended: 1 });
});

test('the open pattern does not wait behind what is asked beside it', async () => {
  const { away, count } = threads({ ...JOBS, findSizes: endless });
  const stop = new AbortController();
  away('findSizes', [] as never, { signal: stop.signal }).catch(() => undefined);
  const worked = away('workOut', [demoPattern()]);
  expect((await worked).sizes.length).toBeGreaterThan(0);
  expect(count.begun).toBe(2);
  stop.abort();
});

test('of a copy, what did not change is the very thing there was before', () => {
  const before = { drawing: { lines: [[1, 2]] }, title: 'Low Tide', sizes: [{ id: 'a' }, { id: 'b' }] };
  const now = structuredClone({ ...before, title: 'High Tide', sizes: [{ id: 'a' }, { id: 'c' }] });
  const kept = keepSame(before, now);
  expect(kept).toEqual({ drawing: { lines: [[1, 2]] }, title: 'High Tide', sizes: [{ id: 'a' }, { id: 'c' }] });
  expect(kept.drawing).toBe(before.drawing);
  expect(kept.sizes[0]).toBe(before.sizes[0]);
  expect(kept.sizes[1]).not.toBe(before.sizes[1]);
  expect(keepSame(before, structuredClone(before))).toBe(before);
  expect(keepSame({ a: 1 }, { a: 1, b: undefined })).toEqual({ a: 1, b: undefined });
});

test('sections of the book cross folded and read as they were written; figures that did not change stay the very same', async () => {
  const { away } = threads();
  const pattern = demoPattern();
  const wanted = ['units', 'quilt'] as const;
  const read = bookReader();
  const written = writeBook(workOut(pattern)).sections.filter(({ id }) => id === 'units' || id === 'quilt');
  const { sections } = read(await away('writeSections', [pattern, wanted]));
  expect(JSON.parse(plainText(sections))).toEqual(JSON.parse(JSON.stringify(written)));

  const [first] = pattern.sizes;
  if (first === undefined) throw new Error('The demo has no size');
  const longer = { ...pattern, sizes: [{ ...first, down: first.down + 1 }, ...pattern.sizes.slice(1)] };
  const later = read(await away('writeSections', [longer, wanted]));
  expect(figuresIn(later.sections)[0]).toBe(figuresIn(sections)[0]);
  expect(JSON.parse(plainText(later.sections))).toEqual(
    JSON.parse(
      JSON.stringify(writeBook(workOut(longer)).sections.filter(({ id }) => id === 'units' || id === 'quilt')),
    ),
  );
});

/** Sections as text, with the marks of every figure read. */
function plainText(sections: readonly Section[]): string {
  return JSON.stringify(sections, (_, value) =>
    isFigure(value) ? { width: value.width, height: value.height, marks: value.marks, alt: value.alt } : value,
  );
}

function isFigure(value: unknown): value is Figure {
  return typeof value === 'object' && value !== null && 'marks' in value && 'alt' in value;
}

function figuresIn(sections: readonly Section[]): readonly Figure[] {
  const found: Figure[] = [];
  JSON.stringify(sections, (_, value) => {
    if (isFigure(value)) found.push(value);
    return value;
  });
  return found;
}
