import type { IncomingMessage } from 'node:http';

/** The largest body a call may have, bytes: the largest photograph, in base 64. */
export const LARGEST_BODY = 60 * 1024 * 1024;

/** The request's whole body as text; `null` when it is larger than allowed, and then what remains of it is thrown away. */
export async function bodyOf(request: IncomingMessage): Promise<string | null> {
  const announced = Number(request.headers['content-length'] ?? 0);
  if (announced > LARGEST_BODY) return tooLarge(request);
  const parts: Buffer[] = [];
  let size = 0;
  for await (const part of request as AsyncIterable<Buffer>) {
    size += part.length;
    if (size <= LARGEST_BODY) parts.push(part);
  }
  return size > LARGEST_BODY ? null : Buffer.concat(parts).toString('utf8');
}

/** Reads on without keeping anything: a connection cut while the browser still sends would hide the answer from it. */
function tooLarge(request: IncomingMessage): null {
  request.resume();
  return null;
}
