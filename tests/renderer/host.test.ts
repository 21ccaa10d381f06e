import { describe, expect, it } from 'vitest';
import { hostBy, overBridge, overHttp, Refused } from '../../src/renderer/state/host.ts';

interface Sent {
  readonly url: string;
  readonly init: RequestInit | undefined;
}

function answering(body: string, status = 200): { readonly sent: Sent[]; readonly fetcher: typeof fetch } {
  const sent: Sent[] = [];
  const fetcher = async (url: string | URL | Request, init?: RequestInit) => {
    sent.push({ url: String(url), init });
    return new Response(body, { status });
  };
  return { sent, fetcher };
}

describe('the host of a browser tab', () => {
  it('is asked by name with the arguments as a list, and its value comes back', async () => {
    const { sent, fetcher } = answering(JSON.stringify({ value: { revision: 4 } }));
    const host = hostBy(overHttp(fetcher));
    expect(await host.openRecipe('shell')).toEqual({ revision: 4 });
    expect(sent[0]?.url).toBe('/call/openRecipe');
    expect(sent[0]?.init).toMatchObject({ method: 'POST', credentials: 'same-origin', body: '["shell"]' });
  });

  it('a refusal is thrown with its words', async () => {
    const refusal = { kind: 'not-found', words: 'There is no recipe of that name.' };
    const host = hostBy(overHttp(answering(JSON.stringify({ refusal })).fetcher));
    await expect(host.openRecipe('x')).rejects.toEqual(new Refused(refusal as Refused['refusal']));
  });

  it.each([['<html>'], ['{}'], ['null']])('an answer that is none (%s) says that the host is away', async (body) => {
    const host = hostBy(overHttp(answering(body).fetcher));
    await expect(host.about()).rejects.toThrow('host does not answer');
  });

  it('a host that was started again asks for its new address', async () => {
    const host = hostBy(overHttp(answering('Open the studio with the address', 403).fetcher));
    await expect(host.about()).rejects.toThrow('Open the address it printed');
  });

  it('a host that has stopped says so in words', async () => {
    const gone = async () => {
      throw new TypeError('fetch failed');
    };
    await expect(hostBy(overHttp(gone)).about()).rejects.toThrow('host does not answer');
  });
});

describe('the host of the desktop window', () => {
  it('is asked over the bridge and opens the same envelope', async () => {
    const asked: unknown[] = [];
    const host = hostBy(
      overBridge({
        call: async (name, args) => {
          asked.push([name, args]);
          return { value: 'here' };
        },
        opened: () => undefined,
      }),
    );
    expect(await host.result('7')).toBe('here');
    expect(asked).toEqual([['result', ['7']]]);
  });
});
