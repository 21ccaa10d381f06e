import { describe, expect, it } from 'vitest';
import { fileName, makePublication } from '../../../src/main/publish/publication.ts';
import { workerPublisher } from '../../../src/main/publish/workerPublisher.ts';
import type { PublishRequest } from '../../../src/shared/contract.ts';
import { samplePattern } from '../helpers/samples.ts';
import { refusalFrom } from '../helpers/service.ts';

const request: PublishRequest = { pattern: samplePattern(), paper: 'a4', draft: false, plainInk: false };
const quiet = () => {};
const never = new AbortController().signal;

/** A pattern whose motif names a block that is not there. */
function unfit(): PublishRequest {
  return { ...request, pattern: samplePattern({ setting: { kind: 'straight', motif: ['A Z'], single: [] } }) };
}

describe('a publication', () => {
  it('is a PDF made on a thread of its own, telling how far it is', async () => {
    const publisher = workerPublisher();
    const told: { progress: number; doing: string }[] = [];
    const file = await publisher.make(request, (progress, doing) => told.push({ progress, doing }), never);
    expect(file).toMatchObject({ name: 'slack-water-edition-1-a4.pdf', type: 'application/pdf' });
    expect(Buffer.from(file.data, 'base64').subarray(0, 8).toString('latin1')).toBe('%PDF-1.7');
    expect(told[0]).toEqual({ progress: 0, doing: 'Working out every size' });
    expect(told.map(({ progress }) => progress)).toEqual(told.map(({ progress }) => progress).sort((a, b) => a - b));
    expect(told.at(-1)?.progress).toBe(1);
    await publisher.close();
  });

  it('can be the sheet for kits of one size instead, or say that there is none', async () => {
    const [size] = request.pattern.sizes;
    const kits = { size: size?.id ?? '', many: 12 };
    const made = await makePublication({ ...request, kits }, quiet, never);
    expect(made.name).toMatch(/^[a-z0-9-]+-12-kits-a4\.pdf$/);
    expect(Buffer.from(made.pdf).subarray(0, 8).toString('latin1')).toBe('%PDF-1.7');
    const none = { size: 'gone', many: 12 };
    expect((await refusalFrom(makePublication({ ...request, kits: none }, quiet, never))).kind).toBe('bad-input');
  });

  it('is the same, byte for byte, on any thread at any time', async () => {
    const publisher = workerPublisher();
    const there = await publisher.make(request, quiet, never);
    const here = await makePublication(request, quiet, never);
    expect(Buffer.from(there.data, 'base64').equals(here.pdf)).toBe(true);
    await publisher.close();
  });

  it('is refused with the findings when it does not fit, also from the thread', async () => {
    const publisher = workerPublisher();
    for (const make of [makePublication, publisher.make]) {
      const refusal = await refusalFrom(make(unfit(), quiet, never));
      expect(refusal.kind).toBe('bad-input');
      expect(refusal.findings?.length).toBeGreaterThan(0);
      expect(refusal.words).toContain(refusal.findings?.[0]?.what);
    }
    await publisher.close();
  });

  it('stops when it is told to, and the thread goes on to the next', async () => {
    const publisher = workerPublisher();
    const stop = new AbortController();
    const stopping = publisher.make(request, () => stop.abort(), stop.signal);
    expect((await refusalFrom(stopping)).kind).toBe('stopped');
    expect((await publisher.make(request, quiet, never)).data.length).toBeGreaterThan(1000);
    await publisher.close();
  });

  it('is not begun when it is stopped before', async () => {
    const publisher = workerPublisher();
    expect((await refusalFrom(publisher.make(request, quiet, AbortSignal.abort()))).kind).toBe('stopped');
    await publisher.close();
  });

  it('ends with the program, and can be made again after its thread has died', async () => {
    const publisher = workerPublisher();
    const cut = refusalFrom(publisher.make(request, quiet, never));
    await publisher.close();
    expect((await cut).kind).toBe('stopped');
    expect((await publisher.make(request, quiet, never)).name).toContain('slack-water');
    await publisher.close();
  });

  it('reports a bug on the thread as one, not as the designer’s mistake', async () => {
    const publisher = workerPublisher();
    const strange = { ...request, pattern: null } as unknown as PublishRequest;
    await expect(publisher.make(strange, quiet, never)).rejects.toBeInstanceOf(Error);
    await expect(publisher.make(strange, quiet, never)).rejects.not.toHaveProperty('kind');
    await publisher.close();
  });
});

describe('the file of a publication', () => {
  const plain = { paper: 'letter', plainInk: false, draft: false } as const;
  const named = (title: string, how: Parameters<typeof fileName>[1] = plain) =>
    fileName({ ...samplePattern({ title }), edition: { number: 2, date: '2026-03-01' } }, how);

  it('is named after the pattern, its edition, and how it is printed', () => {
    expect(named('Slack Water')).toBe('slack-water-edition-2-letter.pdf');
    expect(named('Slack Water', { paper: 'a4', plainInk: true, draft: true })).toBe(
      'slack-water-edition-2-a4-black-and-white-draft.pdf',
    );
  });

  it('has a name that every disk takes', () => {
    expect(named('Île d’Été: “Nord/Sud”?')).toBe('ile-d-ete-nord-sud-edition-2-letter.pdf');
    expect(named('../../etc')).toBe('etc-edition-2-letter.pdf');
    expect(named('潮')).toBe('slack-water-edition-2-letter.pdf');
    expect(named('A'.repeat(200)).length).toBeLessThan(100);
  });
});
