import { describe, expect, it, vi } from 'vitest';
import { bytesOf, type Making, makePages } from '../../../src/renderer/pages/makePages.ts';
import { Refused } from '../../../src/renderer/state/host.ts';
import type { Job, PublishRequest } from '../../../src/shared/contract.ts';

const request = {
  paper: 'letter',
  draft: false,
  plainInk: false,
} as PublishRequest;
const file = {
  name: 'harbour-lights.pdf',
  type: 'application/pdf',
  data: btoa('%PDF-1.7'),
};

function hostWith(jobs: readonly Job[]) {
  const left = [...jobs];
  return {
    publish: vi.fn(async () => ({ job: 'one' })),
    job: vi.fn(async () => (left.length > 1 ? left.shift() : left[0]) as Job),
    cancel: vi.fn(async () => undefined),
    result: vi.fn(async () => file),
  };
}

const working: Job = {
  state: 'working',
  progress: 0.4,
  doing: 'Drawing the figures',
};
const done: Job = { state: 'done', progress: 1, doing: 'Done' };

describe('having the pages made', () => {
  it('tells how far it is and brings the file', async () => {
    const told: Making[] = [];
    const made = await makePages(hostWith([working, done]), request, new AbortController().signal, (m) => told.push(m));
    expect(told.map((m) => m.progress)).toEqual([0.4, 1]);
    expect(new TextDecoder().decode(bytesOf(made))).toBe('%PDF-1.7');
  });

  it('stops the host when the designer stops it', async () => {
    const host = hostWith([working]);
    const stop = new AbortController();
    const made = makePages(host, request, stop.signal, () => stop.abort());
    await expect(made).rejects.toMatchObject({ refusal: { kind: 'stopped' } });
    expect(host.cancel).toHaveBeenCalledWith('one');
    expect(host.result).not.toHaveBeenCalled();
  });

  it('passes on the host’s reason with its findings', async () => {
    const refusal = {
      kind: 'bad-input',
      words: 'Lap does not fit.',
      findings: [],
    } as const;
    const host = hostWith([{ state: 'refused', progress: 0, doing: '', refusal }]);
    const made = makePages(host, request, new AbortController().signal, () => undefined);
    await expect(made).rejects.toBeInstanceOf(Refused);
    await expect(made).rejects.toMatchObject({ refusal });
  });

  it('asks nothing of the host when it is stopped before it begins', async () => {
    const host = hostWith([done]);
    const stop = new AbortController();
    stop.abort();
    await expect(makePages(host, request, stop.signal, () => undefined)).rejects.toBeInstanceOf(Refused);
    expect(host.publish).not.toHaveBeenCalled();
  });
});
