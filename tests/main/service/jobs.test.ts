import { describe, expect, it } from 'vitest';
import { Refused } from '../../../src/main/refusal.ts';
import type { Publisher, Tell } from '../../../src/main/service/publisher.ts';
import type { PublishedFile, PublishRequest } from '../../../src/shared/contract.ts';
import { samplePattern } from '../helpers/samples.ts';
import { refusalFrom, serviceOn } from '../helpers/service.ts';

const request: PublishRequest = { pattern: samplePattern(), paper: 'a4', draft: false, plainInk: false };
const file: PublishedFile = { name: 'slack-water.pdf', type: 'application/pdf', data: 'JVBERi0=' };

/** A publisher that does as the test tells it. */
function puppet() {
  const strings: {
    tell: Tell;
    finish: (file: PublishedFile) => void;
    fail: (error: unknown) => void;
    signal: AbortSignal;
  }[] = [];
  let closed = false;
  const publisher: Publisher = {
    make: (_, tell, signal) =>
      new Promise((finish, fail) => {
        strings.push({ tell, finish, fail, signal });
      }),
    close: async () => {
      closed = true;
    },
  };
  const last = () => {
    const string = strings.at(-1);
    if (string === undefined) throw new Error('nothing was begun');
    return string;
  };
  return { publisher, last, closed: () => closed };
}

const settled = () => new Promise((resolve) => setImmediate(resolve));

describe('publishing', () => {
  it('tells how far it is, and then gives the file', async () => {
    const { publisher, last } = puppet();
    const { service } = serviceOn({ publisher });
    const { job } = await service.publish(request);
    expect(await service.job(job)).toEqual({ state: 'working', progress: 0, doing: 'Beginning' });
    last().tell(0.4, 'Drawing page 3 of 9');
    expect(await service.job(job)).toEqual({ state: 'working', progress: 0.4, doing: 'Drawing page 3 of 9' });
    expect((await refusalFrom(service.result(job))).kind).toBe('not-found');
    last().finish(file);
    await settled();
    expect(await service.job(job)).toEqual({ state: 'done', progress: 1, doing: 'Done' });
    expect(await service.result(job)).toEqual(file);
    expect(await service.result(job)).toEqual(file);
  });

  it('never goes back, nor beyond the whole', async () => {
    const { publisher, last } = puppet();
    const { service } = serviceOn({ publisher });
    const { job } = await service.publish(request);
    last().tell(0.6, 'a');
    last().tell(0.2, 'b');
    expect((await service.job(job)).progress).toBe(0.6);
    last().tell(7, 'c');
    expect((await service.job(job)).progress).toBe(1);
  });

  it('can be stopped, and stays stopped whatever the work still says', async () => {
    const { publisher, last } = puppet();
    const { service, reported } = serviceOn({ publisher });
    const { job } = await service.publish(request);
    await service.cancel(job);
    expect(last().signal.aborted).toBe(true);
    last().tell(0.9, 'too late');
    last().finish(file);
    await settled();
    expect(await service.job(job)).toMatchObject({ state: 'stopped', doing: 'Stopped' });
    expect((await refusalFrom(service.result(job))).kind).toBe('stopped');
    expect(reported).toEqual([]);
  });

  it('is not stopped after it has ended', async () => {
    const { publisher, last } = puppet();
    const { service } = serviceOn({ publisher });
    const { job } = await service.publish(request);
    last().finish(file);
    await settled();
    await service.cancel(job);
    expect((await service.job(job)).state).toBe('done');
  });

  it('is refused with the findings that stop it', async () => {
    const { publisher, last } = puppet();
    const { service, reported } = serviceOn({ publisher });
    const { job } = await service.publish(request);
    const findings = [
      { level: 'stops' as const, what: 'The outer border is 3/8″ short.', where: { path: 'borders[0]' } },
    ];
    last().fail(new Refused('bad-input', 'It does not fit yet.', findings));
    await settled();
    const refusal = { kind: 'bad-input', words: 'It does not fit yet.', findings };
    expect(await service.job(job)).toMatchObject({ state: 'refused', refusal });
    expect(await refusalFrom(service.result(job))).toMatchObject(refusal);
    expect(reported).toEqual([]);
  });

  it('reports a bug, and goes on', async () => {
    const { publisher, last } = puppet();
    const { service, reported } = serviceOn({ publisher });
    const { job } = await service.publish(request);
    last().fail(new TypeError('undefined is not a quilt'));
    await settled();
    expect(await service.job(job)).toMatchObject({ state: 'refused', refusal: { kind: 'broken' } });
    expect(reported).toHaveLength(1);
    expect(await service.publish(request)).toMatchObject({ job: expect.any(String) });
  });

  it('remembers the last few, and never forgets one that is working', async () => {
    const { publisher, last } = puppet();
    const { service } = serviceOn({ publisher });
    const working = (await service.publish(request)).job;
    const ended = [];
    for (let time = 0; time < 8; time += 1) {
      ended.push((await service.publish(request)).job);
      last().finish(file);
      await settled();
    }
    expect((await service.job(working)).state).toBe('working');
    expect((await refusalFrom(service.job(ended[0] ?? ''))).kind).toBe('not-found');
    expect((await service.job(ended[7] ?? '')).state).toBe('done');
  });

  it('ends with the service', async () => {
    const { publisher, last, closed } = puppet();
    const { service } = serviceOn({ publisher });
    await service.publish(request);
    await service.close();
    expect(last().signal.aborted).toBe(true);
    expect(closed()).toBe(true);
  });
});
