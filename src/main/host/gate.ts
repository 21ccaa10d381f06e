import { createHash, randomBytes, timingSafeEqual } from 'node:crypto';
import type { IncomingMessage } from 'node:http';

/** Who may come in: only the browser that opened the printed address, and only from pages of this very host. */
export interface Gate {
  /** The one-time key that goes into the printed address. */
  readonly key: string;
  /** Whether the request is meant for this host and, where it says so, comes from one of its own pages. */
  isFromHere(request: IncomingMessage): boolean;
  /** Whether it carries the pass that was given for the key. */
  hasPass(request: IncomingMessage): boolean;
  /** The cookie with the pass, in exchange for the key; `null` for a wrong key and for the key's second use. */
  exchange(key: string): string | null;
}

/**
 * A gate for the host at `authority` ("127.0.0.1:4747"). Cookies are shared by all ports of a machine, so the pass carries
 * the port in its name.
 */
export function makeGate(authority: string): Gate {
  const key = secret();
  const pass = secret();
  const name = `piecewright-${authority.split(':')[1]}`;
  let used = false;
  return {
    key,
    isFromHere({ headers, method }) {
      // A page of another site that had its name pointed at this machine still sends that name as Host.
      if (headers.host !== authority) return false;
      const { origin } = headers;
      // Browsers send Origin with every POST; one without it is no browser's.
      if (origin === undefined) return method !== 'POST';
      return origin === `http://${authority}`;
    },
    hasPass: (request) => cookiesOf(request, name).some((value) => isSame(value, pass)),
    exchange(offered) {
      if (used || !isSame(offered, key)) return null;
      used = true;
      return `${name}=${pass}; HttpOnly; SameSite=Strict; Path=/`;
    },
  };
}

function secret(): string {
  return randomBytes(32).toString('base64url');
}

/** Compares in a time that tells nothing about where two secrets differ. */
function isSame(a: string, b: string): boolean {
  const digest = (text: string): Buffer => createHash('sha256').update(text).digest();
  return timingSafeEqual(digest(a), digest(b));
}

function cookiesOf(request: IncomingMessage, name: string): readonly string[] {
  return (request.headers.cookie ?? '')
    .split(';')
    .map((cookie) => cookie.trim())
    .filter((cookie) => cookie.startsWith(`${name}=`))
    .map((cookie) => cookie.slice(name.length + 1));
}
