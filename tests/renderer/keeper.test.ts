import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { Keeper, type Kept } from '../../src/renderer/state/keeper.ts';
import { fakeHost } from '../helpers/fakeHost.ts';
import { smallPattern } from './pattern.ts';

function begin(revision: number | null = 1) {
  const start = smallPattern();
  const host = fakeHost({ patterns: revision === null ? [] : [start] });
  const told: Kept[] = [];
  const keeper = new Keeper(host.savePattern, revision, (kept) => told.push(kept));
  const titled = (title: string) => ({ ...start, title });
  return { host, keeper, told, titled };
}

describe('every edit is on disk within a moment', () => {
  beforeEach(() => {
    vi.useFakeTimers();
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  it('keeps an edit at once and says so', async () => {
    const { host, keeper, told, titled } = begin();
    keeper.keep(titled('One'));
    expect(told).toEqual([{ state: 'keeping' }]);
    await keeper.settled();
    expect(host.saved.map(({ title }) => title)).toEqual(['One']);
    expect(told.at(-1)).toEqual({ state: 'kept' });
    expect(keeper.busy).toBe(false);
  });

  it('a pattern that was on no disk is kept as new', async () => {
    const { host, keeper, titled } = begin(null);
    keeper.keep(titled('New'));
    await keeper.settled();
    expect(host.saved).toHaveLength(1);
  });

  it('keeps the newest of many quick edits, never two at a time', async () => {
    const { host, keeper, titled } = begin();
    let release = () => {};
    host.holdSaves(new Promise<void>((done) => (release = done)));
    for (const title of ['One', 'Two', 'Three', 'Four']) keeper.keep(titled(title));
    release();
    await keeper.settled();
    expect(host.saved.map(({ title }) => title)).toEqual(['One', 'Four']);
  });

  it('says why when the disk refuses, and keeps the document in hand', async () => {
    const { host, keeper, told, titled } = begin();
    const refusal = { kind: 'no-room', words: 'There is no room left on the disk.' } as const;
    host.refuseSaves(refusal);
    keeper.keep(titled('One'));
    await keeper.settled();
    expect(told.at(-1)).toEqual({ state: 'refused', refusal });
    expect(keeper.busy).toBe(true);
  });

  it('tries again by itself once there may be room', async () => {
    const { host, keeper, told, titled } = begin();
    host.refuseSaves({ kind: 'no-room', words: 'There is no room left on the disk.' });
    keeper.keep(titled('One'));
    await keeper.settled();
    host.refuseSaves(null);
    await vi.advanceTimersByTimeAsync(5000);
    await keeper.settled();
    expect(host.saved.map(({ title }) => title)).toEqual(['One']);
    expect(told.at(-1)).toEqual({ state: 'kept' });
  });

  it('the next edit takes the refused one along', async () => {
    const { host, keeper, titled } = begin();
    host.refuseSaves({ kind: 'no-room', words: 'There is no room left on the disk.' });
    keeper.keep(titled('One'));
    await keeper.settled();
    host.refuseSaves(null);
    keeper.keep(titled('Two'));
    await keeper.settled();
    expect(host.saved.map(({ title }) => title)).toEqual(['Two']);
  });

  it('stopped while a save is on its way, it tries no more and says no more', async () => {
    const { host, keeper, told, titled } = begin();
    host.refuseSaves({ kind: 'no-room', words: 'There is no room left on the disk.' });
    keeper.keep(titled('One'));
    keeper.stop();
    await keeper.settled();
    host.refuseSaves(null);
    await vi.advanceTimersByTimeAsync(20_000);
    expect(host.saved).toEqual([]);
    expect(told).toEqual([{ state: 'keeping' }]);
    expect(keeper.busy).toBe(false);
  });

  it('never writes over what another window kept, unless told to', async () => {
    const { host, keeper, told, titled } = begin();
    await host.savePattern({ pattern: titled('Theirs'), revision: 1 });
    keeper.keep(titled('Mine'));
    await keeper.settled();
    expect(told.at(-1)).toMatchObject({ state: 'refused', refusal: { kind: 'changed-elsewhere' } });
    expect((await host.openPattern('low-tide')).title).toBe('Theirs');
    keeper.tryAgain({ revision: 2 });
    await keeper.settled();
    expect((await host.openPattern('low-tide')).title).toBe('Mine');
  });
});
