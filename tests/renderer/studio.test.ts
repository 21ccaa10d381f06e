import { describe, expect, it } from 'vitest';
import { inLine } from '../../src/renderer/state/away/inLine.ts';
import { AWAY, Refused } from '../../src/renderer/state/host.ts';
import { createStudio } from '../../src/renderer/state/studio.ts';
import type { Pattern } from '../../src/shared/pattern/schema.ts';
import type { WorkedOut } from '../../src/shared/workroom/workedOut.ts';
import { fakeHost } from '../helpers/fakeHost.ts';
import { smallPattern, widen, widthOf } from './pattern.ts';

const workOut = (pattern: Pattern): WorkedOut => ({
  pattern,
  blocks: [],
  assembly: { way: 'rows', pinned: false, why: '' },
  sizes: [],
  findings: [],
});

function runAll(waiting: (() => void)[]): void {
  for (const run of waiting.splice(0)) run();
}

function begin(patterns = [smallPattern()]) {
  const host = fakeHost({ patterns });
  const waiting: (() => void)[] = [];
  const worked: number[] = [];
  const counted = (pattern: Pattern) => {
    worked.push(widthOf(pattern) ?? 0);
    return workOut(pattern);
  };
  const studio = createStudio({ host, away: inLine({ workOut: counted }, (run) => waiting.push(run)) });
  const catchUp = async () => {
    while (waiting.length > 0) {
      runAll(waiting);
      await soon();
    }
  };
  return { host, studio, worked, catchUp, state: studio.store.getState };
}

/** Lets every promise that is ready go on, and the task after it, in which an answer is shown. */
const soon = () => new Promise((done) => setTimeout(done, 5));

describe('the studio', () => {
  it('opens what was open last', async () => {
    const { studio, state } = begin();
    await studio.start();
    expect(state().history?.now.title).toBe('Low Tide');
    expect(state().size).toBe('cot');
  });

  it('opens on the library when nothing is kept', async () => {
    const { studio, state } = begin([]);
    await studio.start();
    expect(state()).toMatchObject({ view: 'library', history: null, closed: null });
  });

  it('says why when the last pattern cannot be opened, and leaves the way to the others', async () => {
    const host = fakeHost({ patterns: [smallPattern()], first: 'washed-away' });
    const studio = createStudio({ host, away: inLine({ workOut }) });
    await studio.start();
    expect(studio.store.getState().closed).toMatchObject({ kind: 'not-found' });
    expect(await studio.open('low-tide')).toBe(true);
    expect(studio.store.getState().closed).toBeNull();
  });

  it('puts every edit on disk without being asked', async () => {
    const { studio, host, state } = begin();
    await studio.start();
    studio.act(widen, { to: 6 });
    await soon();
    expect(host.saved.map(widthOf)).toEqual([6]);
    expect(state().kept).toEqual({ state: 'kept' });
  });

  it('undo and redo are kept like any edit', async () => {
    const { studio, host, state } = begin();
    await studio.start();
    studio.act(widen, { to: 6 });
    studio.undo();
    await soon();
    expect(widthOf(state().history?.now)).toBe(4);
    expect(widthOf(host.saved.at(-1))).toBe(4);
    studio.redo();
    await soon();
    expect(widthOf(host.saved.at(-1))).toBe(6);
  });

  it('what becomes of the last document is not said of the next', async () => {
    const [one, two] = [smallPattern(), { ...smallPattern(), id: 'spring-tide', title: 'Spring Tide' }];
    const host = fakeHost({ patterns: [one, two], first: one.id });
    let arrive = () => {};
    const slow = new Promise<void>((done) => {
      arrive = done;
    });
    const openPattern: typeof host.openPattern = async (id) => {
      if (id === two.id) await slow;
      return host.openPattern(id);
    };
    const savePattern: typeof host.savePattern = async (request) => {
      await slow;
      return host.savePattern(request);
    };
    const studio = createStudio({ host: { ...host, openPattern, savePattern }, away: inLine({ workOut }) });
    await studio.start();
    const opening = studio.open(two.id);
    await soon();
    // An edit by a fast hand while the next document is on its way, which the disk then refuses.
    host.refuseSaves({ kind: 'no-room', words: 'There is no room left on the disk.' });
    studio.act(widen, { to: 9 });
    arrive();
    expect(await opening).toBe(true);
    await soon();
    expect(studio.store.getState()).toMatchObject({ kept: { state: 'kept' }, history: { now: { id: two.id } } });
  });

  it('works out the newest of several edits next, and shows the last answer until then', async () => {
    const { studio, worked, catchUp, state } = begin();
    await studio.start();
    await catchUp();
    for (const to of [5, 6, 7]) studio.act(widen, { to });
    expect(widthOf(state().worked?.pattern)).toBe(4);
    expect(state().working).toBe(true);
    await catchUp();
    expect(worked).toEqual([4, 5, 7]);
    expect(state().worked?.pattern).toBe(state().history?.now);
    expect(state()).toMatchObject({ working: false });
  });

  it('an answer that cannot be worked out leaves the last one standing and says so', async () => {
    const host = fakeHost({ patterns: [smallPattern()] });
    const waiting: (() => void)[] = [];
    let broken = false;
    const loose = (pattern: Pattern) => {
      if (broken) throw new RangeError('a loose thread');
      return workOut(pattern);
    };
    const studio = createStudio({
      host,
      away: inLine({ workOut: loose }, (run) => waiting.push(run)),
    });
    await studio.start();
    runAll(waiting);
    await soon();
    broken = true;
    studio.act(widen, { to: 6 });
    runAll(waiting);
    await soon();
    expect(widthOf(studio.store.getState().worked?.pattern)).toBe(4);
    expect(studio.store.getState().notes.at(-1)).toMatchObject({ tone: 'stops' });
  });

  it('says all that is wrong with a file, up to four things', () => {
    const { studio, state } = begin();
    const findings = Array.from({ length: 6 }, (_, i) => ({
      level: 'stops' as const,
      what: `Thing ${i}.`,
      where: { path: '' },
    }));
    studio.sayWhy(new Refused({ kind: 'bad-input', words: 'a.json: Thing 0.', findings }));
    expect(state().notes.at(-1)?.more).toEqual(['Thing 1.', 'Thing 2.', 'Thing 3.', '2 more things are wrong.']);
    studio.sayWhy(new Refused({ kind: 'bad-input', words: 'a.json: Thing 0.', findings: findings.slice(0, 1) }));
    expect(state().notes.at(-1)?.more).toEqual([]);
  });

  it('keeps the open pattern before it opens another', async () => {
    const other = smallPattern({ id: 'spring-tide', title: 'Spring Tide' });
    const { studio, host, state } = begin([smallPattern(), other]);
    await studio.start();
    studio.act(widen, { to: 6 });
    expect(await studio.open('spring-tide')).toBe(true);
    expect(widthOf(host.saved[0])).toBe(6);
    expect(state().history?.now.title).toBe('Spring Tide');
    expect(state().history?.undo).toEqual([]);
  });

  it('does not let go of a pattern that the disk refuses', async () => {
    const other = smallPattern({ id: 'spring-tide', title: 'Spring Tide' });
    const { studio, host, state } = begin([smallPattern(), other]);
    await studio.start();
    host.refuseSaves({ kind: 'no-room', words: 'There is no room left on the disk.' });
    studio.act(widen, { to: 6 });
    await soon();
    expect(await studio.open('spring-tide')).toBe(false);
    expect(state().history?.now.title).toBe('Low Tide');
    host.refuseSaves(null);
    await studio.keepAgain();
    expect(state().kept).toEqual({ state: 'kept' });
  });

  it('puts back a pattern that another window has removed, as it is here', async () => {
    const { studio, host, state } = begin();
    await studio.start();
    await host.removePattern('low-tide');
    host.refuseSaves({ kind: 'not-found', words: '“Low Tide” was removed from the library in another window.' });
    studio.act(widen, { to: 6 });
    await soon();
    expect(state().kept).toMatchObject({ state: 'refused', refusal: { kind: 'not-found' } });
    host.refuseSaves(null);
    await studio.keepAgain(true);
    expect(state().kept).toEqual({ state: 'kept' });
    expect(widthOf(await host.openPattern('low-tide'))).toBe(6);
  });

  it('says once that the host is away, and no longer when it is back', async () => {
    const { studio, state } = begin();
    await studio.start();
    studio.sayWhy(new Refused(AWAY));
    studio.say('Something else.');
    studio.sayWhy(new Refused(AWAY));
    expect(state().notes.map(({ words }) => words)).toEqual(['Something else.', AWAY.words]);
    studio.act(widen, { to: 6 });
    await soon();
    expect(state().notes.map(({ words }) => words)).toEqual(['Something else.']);
  });

  it('a fresh pattern is on disk as soon as it is open', async () => {
    const { studio, host } = begin([]);
    await studio.openFresh(smallPattern());
    await soon();
    expect(host.saved.map(({ title }) => title)).toEqual(['Low Tide']);
  });
});
