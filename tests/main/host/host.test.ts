import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { request as httpRequest } from 'node:http';
import { networkInterfaces } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { LARGEST_BODY } from '../../../src/main/host/body.ts';
import { type Host, startHost } from '../../../src/main/host/server.ts';
import type { Store } from '../../../src/main/store/store.ts';
import { freshFolder } from '../helpers/folder.ts';
import { samplePattern } from '../helpers/samples.ts';
import { serviceOn } from '../helpers/service.ts';

interface Reply {
  readonly status: number;
  readonly headers: NodeJS.Dict<string | string[]>;
  readonly text: string;
}

interface Asked {
  readonly method?: string;
  readonly headers?: Record<string, string | number>;
  readonly body?: string | Buffer;
}

let host: Host;
let store: Store;
let reported: unknown[];
let cookie = '';

beforeEach(async () => {
  cookie = '';
  const served = serviceOn();
  ({ store, reported } = served);
  host = await startHost({
    service: served.service,
    files: builtWindow(),
    port: 0,
    report: (error) => reported.push(error),
  });
});

afterEach(async () => {
  await host.close();
  expect(reported).toEqual([]);
});

/** A built window beside a file that is nobody's business. */
function builtWindow(): string {
  const folder = freshFolder();
  const window = join(folder, 'renderer');
  mkdirSync(join(window, 'assets'), { recursive: true });
  writeFileSync(join(window, 'index.html'), '<!doctype html><title>Studio</title>');
  writeFileSync(join(window, 'assets', 'index-1a2b.js'), 'export {};');
  writeFileSync(join(window, '.hidden'), 'secret');
  writeFileSync(join(folder, 'secret.txt'), 'secret');
  symlinkSync(join(folder, 'secret.txt'), join(window, 'assets', 'link.txt'));
  return window;
}

/** Sends exactly the path and headers given: no client tidies them up first. */
function ask(path: string, { method = 'GET', headers = {}, body }: Asked = {}): Promise<Reply> {
  return new Promise((resolve, reject) => {
    const sent = httpRequest({ host: '127.0.0.1', port: host.port, path, method, headers }, (response) => {
      const parts: Buffer[] = [];
      response.on('data', (part: Buffer) => parts.push(part));
      response.on('end', () =>
        resolve({ status: response.statusCode ?? 0, headers: response.headers, text: Buffer.concat(parts).toString() }),
      );
    });
    sent.on('error', reject);
    sent.end(body);
  });
}

const origin = () => `http://127.0.0.1:${host.port}`;
const printedPath = () => host.address.slice(origin().length);

/** The pass of a browser that has opened the printed address, which it does once in a test. */
async function pass(): Promise<string> {
  if (cookie === '') cookie = String((await ask(printedPath())).headers['set-cookie']).split(';')[0] ?? '';
  return cookie;
}

async function call(name: string, body: string | Buffer, more: Record<string, string | number> = {}): Promise<Reply> {
  const headers = { Cookie: await pass(), Origin: origin(), 'Content-Type': 'application/json', ...more };
  return ask(`/call/${name}`, { method: 'POST', headers, body });
}

describe('the printed address', () => {
  it('is of this machine only', async () => {
    expect(host.address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/\?key=[\w-]{43}$/);
    const outside = Object.values(networkInterfaces())
      .flat()
      .find((net) => net?.family === 'IPv4' && !net.internal);
    if (outside !== undefined) {
      const reached = fetch(`http://${outside.address}:${host.port}/`).then(
        () => true,
        () => false,
      );
      expect(await reached).toBe(false);
    }
  });

  it('lets one browser in, and then no other', async () => {
    const first = await ask(printedPath());
    expect(first.status).toBe(303);
    expect(first.headers.location).toBe('/');
    expect(String(first.headers['set-cookie'])).toMatch(
      new RegExp(`^piecewright-${host.port}=[\\w-]{43}; HttpOnly; SameSite=Strict; Path=/$`),
    );
    const second = await ask(printedPath());
    expect(second.status).toBe(403);
    expect(second.headers['set-cookie']).toBeUndefined();
    expect(second.text).toContain('works once');
  });

  it('goes on for the browser that is already in', async () => {
    const again = await ask(printedPath(), { headers: { Cookie: await pass() } });
    expect([again.status, again.headers.location, again.headers['set-cookie']]).toEqual([303, '/', undefined]);
  });

  it('does not yield to a guess, which does not use it up either', async () => {
    for (const key of ['', 'x', printedPath().slice(6, -1), `${printedPath().slice(6)}x`]) {
      expect((await ask(`/?key=${key}`)).status).toBe(403);
    }
    expect((await ask(printedPath())).status).toBe(303);
  });
});

describe('without the pass', () => {
  it('nothing is served and nothing is called', async () => {
    for (const path of ['/', '/index.html', '/assets/index-1a2b.js', '/nowhere']) {
      expect((await ask(path)).status).toBe(403);
    }
    const headers = { Origin: origin(), 'Content-Type': 'application/json' };
    const wrong = { ...headers, Cookie: `piecewright-${host.port}=guess; piecewright-1=guess` };
    for (const sent of [headers, wrong]) {
      const reply = await ask('/call/patterns', { method: 'POST', headers: sent, body: '[]' });
      expect([reply.status, reply.text.includes('value')]).toEqual([403, false]);
    }
  });
});

describe('a page of another site', () => {
  it.each([['localhost'], ['studio.example'], ['127.0.0.1'], ['127.0.0.1:1']])(
    'that had its name pointed here (%j) gets nothing, not even for the key',
    async (name) => {
      const headers = { Host: name, Cookie: await pass() };
      expect((await ask('/', { headers })).status).toBe(403);
      expect((await ask(printedPath(), { headers })).headers['set-cookie']).toBeUndefined();
    },
  );

  it.each([['http://studio.example'], ['null'], ['https://127.0.0.1'], ['http://127.0.0.1'], ['http://localhost']])(
    'with the origin %j can neither call nor read',
    async (from) => {
      const reply = await call('patterns', '[]', { Origin: from });
      expect(reply.status).toBe(403);
      expect((await ask('/', { headers: { Cookie: await pass(), Origin: from } })).status).toBe(403);
    },
  );

  it('cannot call without an origin, as a form or as a simple request', async () => {
    const bare = { Cookie: await pass(), 'Content-Type': 'application/json' };
    expect((await ask('/call/patterns', { method: 'POST', headers: bare, body: '[]' })).status).toBe(403);
    for (const type of ['text/plain', 'application/x-www-form-urlencoded', '']) {
      const headers = { Cookie: await pass(), Origin: origin(), ...(type === '' ? {} : { 'Content-Type': type }) };
      expect((await ask('/call/patterns', { method: 'POST', headers, body: '[]' })).status).toBe(415);
    }
  });
});

describe('the files of the window', () => {
  it('come with their type, and only those named by their content are kept', async () => {
    const headers = { Cookie: await pass() };
    const page = await ask('/', { headers });
    expect([page.status, page.headers['content-type'], page.headers['cache-control']]).toEqual([
      200,
      'text/html; charset=utf-8',
      'no-cache',
    ]);
    const script = await ask('/assets/index-1a2b.js', { headers });
    expect([script.text, script.headers['content-type']]).toEqual(['export {};', 'text/javascript; charset=utf-8']);
    expect(script.headers['cache-control']).toContain('immutable');
    const head = await ask('/', { method: 'HEAD', headers });
    expect([head.status, head.text, head.headers['content-length']]).toEqual([200, '', String(page.text.length)]);
  });

  it.each([
    ['/../secret.txt'],
    ['/assets/../../secret.txt'],
    ['/..%2fsecret.txt'],
    ['/%2e%2e/secret.txt'],
    ['/%2e%2e%2fsecret.txt'],
    ['/..%5csecret.txt'],
    ['/assets/..\\..\\secret.txt'],
    ['/assets/link.txt'],
    ['/.hidden'],
    ['/%2ehidden'],
    ['//secret.txt'],
    ['/C:/secret.txt'],
    ['/index.html%00.js'],
    ['/%E0%A4%A'],
    ['/assets'],
    ['/assets/'],
    ['/nowhere.js'],
  ])('do not include %s', async (path) => {
    const reply = await ask(path, { headers: { Cookie: await pass() } });
    expect([reply.status, reply.text]).toEqual([404, 'There is nothing here.']);
  });

  it('are only read', async () => {
    const headers = { Cookie: await pass(), Origin: origin() };
    for (const method of ['PUT', 'DELETE', 'OPTIONS', 'PATCH']) {
      const reply = await ask('/', { method, headers });
      expect([reply.status, reply.headers['access-control-allow-origin']]).toEqual([405, undefined]);
    }
  });
});

describe('every answer', () => {
  it('carries the policy that keeps others out', async () => {
    const headers = { Cookie: await pass() };
    for (const reply of [
      await ask('/', { headers }),
      await ask('/'),
      await call('about', '[]'),
      await ask('/no', { headers }),
    ]) {
      const policy = String(reply.headers['content-security-policy']);
      expect(policy).toContain("default-src 'none'");
      expect(policy).toContain("frame-ancestors 'none'");
      expect(policy).not.toMatch(/script-src[^;]*(unsafe|http|\*)/);
      expect(reply.headers).toMatchObject({
        'x-content-type-options': 'nosniff',
        'x-frame-options': 'DENY',
        'referrer-policy': 'no-referrer',
        'cross-origin-resource-policy': 'same-origin',
      });
      expect(reply.headers['x-powered-by']).toBeUndefined();
    }
  });
});

describe('a call', () => {
  it('is answered with its value, which nobody may keep', async () => {
    const kept = await call('savePattern', JSON.stringify([{ pattern: samplePattern(), revision: null }]));
    expect([kept.status, kept.text]).toEqual([200, '{"value":{"revision":1}}']);
    expect(kept.headers).toMatchObject({
      'cache-control': 'no-store',
      'content-type': 'application/json; charset=utf-8',
    });
    expect(store.patterns.has('slack-water')).toBe(true);
    const removed = await call('removePattern', '["slack-water"]');
    expect([removed.status, removed.text]).toEqual([200, '{"value":null}']);
  });

  it.each([
    ['openPattern', '["nowhere"]', 404, 'not-found'],
    ['openPattern', '[7]', 400, 'bad-input'],
    ['openPattern', '{}', 400, 'bad-input'],
    ['openPattern', '[', 400, 'bad-input'],
    ['openPattern', '', 400, 'bad-input'],
    ['close', '[]', 404, 'not-found'],
    ['constructor', '[]', 404, 'not-found'],
    ['importFile', '[{"name":"x.json","text":"{}"}]', 400, 'bad-input'],
  ])('of %s with %s is refused with %i', async (name, body, status, kind) => {
    const reply = await call(name, body);
    expect([reply.status, JSON.parse(reply.text).refusal.kind]).toEqual([status, kind]);
  });

  it('tells of a change made elsewhere', async () => {
    const body = JSON.stringify([{ pattern: samplePattern(), revision: null }]);
    await call('savePattern', body);
    expect((await call('savePattern', body)).status).toBe(409);
  });

  it('is refused when it is too large, whether it says so or not', async () => {
    const large = Buffer.alloc(LARGEST_BODY + 1, ' ');
    const announced = await call('importFile', large, { 'Content-Length': large.length });
    expect([announced.status, JSON.parse(announced.text).refusal.kind]).toEqual([413, 'bad-input']);
    const unannounced = await call('importFile', large, { 'Transfer-Encoding': 'chunked' });
    expect(unannounced.status).toBe(413);
    expect((await call('patterns', '[]')).status).toBe(200);
  });

  it('has no other place', async () => {
    const headers = { Cookie: await pass(), Origin: origin(), 'Content-Type': 'application/json' };
    for (const path of ['/', '/call', '/call/', '/call/patterns/', '/call/..%2fpatterns', '/Call/patterns']) {
      expect((await ask(path, { method: 'POST', headers, body: '[]' })).status).toBe(404);
    }
  });
});

describe('a host', () => {
  it('says so when its port is taken', async () => {
    const { service } = serviceOn();
    const second = startHost({ service, files: builtWindow(), port: host.port, report: () => {} });
    await expect(second).rejects.toMatchObject({ code: 'EADDRINUSE' });
  });

  it('gives another key and another pass at every start', async () => {
    const { service } = serviceOn();
    const second = await startHost({ service, files: builtWindow(), port: 0, report: () => {} });
    expect(second.address.split('key=')[1]).not.toBe(host.address.split('key=')[1]);
    await second.close();
  });
});
