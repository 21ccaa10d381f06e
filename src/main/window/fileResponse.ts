import { fileAt } from '../host/files.ts';
import { SECURITY_HEADERS } from '../host/headers.ts';

/** The answer to the desktop window's request for one of its files, under the same policy as in the browser. */
export async function fileResponse(root: string, url: string): Promise<Response> {
  const { host, pathname } = new URL(url);
  const file = host === 'studio' ? await fileAt(root, pathname) : null;
  if (file === null) return new Response('There is nothing here.', { status: 404, headers: SECURITY_HEADERS });
  const headers = { ...SECURITY_HEADERS, 'Content-Type': file.type, 'Cache-Control': file.caching };
  return new Response(new Uint8Array(file.body), { headers });
}
