import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Contract } from '../../shared/contract.ts';
import { answerCall } from './calls.ts';
import { fileAt } from './files.ts';
import { type Gate, makeGate } from './gate.ts';
import { SECURITY_HEADERS } from './headers.ts';

export interface HostOptions {
  readonly service: Contract;
  /** The folder of the built window. */
  readonly files: string;
  /** 0 for any port that is free. */
  readonly port: number;
  /** Where a bug is reported; the browser is told only that there was one. */
  readonly report: (error: unknown) => void;
}

export interface Host {
  /** The address to open, with its one-time key. */
  readonly address: string;
  readonly port: number;
  close(): Promise<void>;
}

/** Only this machine can reach it; the name "localhost" may mean another address, so it is not used. */
const LOOPBACK = '127.0.0.1';

/**
 * Serves the studio to a browser on this machine. Rejects with Node's own error when the port cannot be had.
 */
export async function startHost(options: HostOptions): Promise<Host> {
  const server = createServer();
  await listen(server, options.port);
  const { port } = server.address() as AddressInfo;
  const gate = makeGate(`${LOOPBACK}:${port}`);
  server.on('request', (request, response) => {
    respond(options, gate, request, response).catch((error: unknown) => {
      options.report(error);
      send(response, 500, 'Something went wrong. Nothing that was saved is lost.');
    });
  });
  return { address: `http://${LOOPBACK}:${port}/?key=${gate.key}`, port, close: () => close(server) };
}

async function respond(
  options: HostOptions,
  gate: Gate,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  const [path = '', query = ''] = (request.url ?? '').split('?', 2);
  if (!gate.isFromHere(request)) return send(response, 403, 'This address is not for you.');
  const key = new URLSearchParams(query).get('key');
  if (key !== null && path === '/' && request.method === 'GET') return letIn(gate, key, request, response);
  if (!gate.hasPass(request)) return send(response, 403, KNOCK);
  if (request.method === 'POST') return call(options, path, request, response);
  if (request.method === 'GET' || request.method === 'HEAD') return file(options.files, path, request, response);
  send(response, 405, 'Piecewright does not know this way of asking.', { Allow: 'GET, HEAD, POST' });
}

const KNOCK =
  'Open the studio with the address that Piecewright printed when it started. That address works once, in one browser; ' +
  'for another, stop Piecewright and start it again. Nothing that was saved is lost.';

function letIn(gate: Gate, key: string, request: IncomingMessage, response: ServerResponse): void {
  // The printed address is often clicked twice; a browser that is already in simply goes on.
  const cookie = gate.exchange(key);
  if (cookie !== null) send(response, 303, '', { Location: '/', 'Set-Cookie': cookie });
  else if (gate.hasPass(request)) send(response, 303, '', { Location: '/' });
  else send(response, 403, KNOCK);
}

async function call(
  options: HostOptions,
  path: string,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  const name = /^\/call\/([A-Za-z]+)$/.exec(path)?.[1];
  if (name === undefined) return send(response, 404, 'There is nothing here.');
  const { status, answer } = await answerCall(options.service, name, request, options.report);
  send(response, status, JSON.stringify(answer), { 'Content-Type': 'application/json; charset=utf-8' });
}

async function file(root: string, path: string, request: IncomingMessage, response: ServerResponse): Promise<void> {
  const found = await fileAt(root, path);
  if (found === null) return send(response, 404, 'There is nothing here.');
  const headers = { 'Content-Type': found.type, 'Cache-Control': found.caching, 'Content-Length': found.body.length };
  response.writeHead(200, { ...SECURITY_HEADERS, ...headers });
  response.end(request.method === 'HEAD' ? undefined : found.body);
}

/** A short answer that nobody may keep: calls, refusals and redirections. */
function send(response: ServerResponse, status: number, text: string, more: Record<string, string> = {}): void {
  if (response.headersSent) {
    response.destroy();
    return;
  }
  const body = Buffer.from(text, 'utf8');
  response.writeHead(status, {
    ...SECURITY_HEADERS,
    'Content-Type': 'text/plain; charset=utf-8',
    'Cache-Control': 'no-store',
    'Content-Length': body.length,
    ...more,
  });
  response.end(body);
}

function listen(server: Server, port: number): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen({ host: LOOPBACK, port, exclusive: true }, () => {
      server.off('error', reject);
      resolve();
    });
  });
}

function close(server: Server): Promise<void> {
  return new Promise((resolve) => {
    server.close(() => resolve());
    server.closeAllConnections();
  });
}
