import { type Answer, type Bridge, CALLS, type Contract, type Refusal } from '../../shared/contract.ts';

/** Carries one call to the host and brings its answer; throws a `Refused` when the host says no. */
export type Carry = (name: keyof Contract, args: readonly unknown[]) => Promise<unknown>;

/** A call the host did not answer, with its reason in words for the designer. */
export class Refused extends Error {
  readonly refusal: Refusal;

  constructor(refusal: Refusal) {
    super(refusal.words);
    this.name = 'Refused';
    this.refusal = refusal;
  }
}

/** Why something did not happen, whatever was thrown. */
export function refusalOf(thrown: unknown): Refusal {
  if (thrown instanceof Refused) return thrown.refusal;
  const words = thrown instanceof Error ? thrown.message : String(thrown);
  return { kind: 'broken', words: `Something in the studio went wrong: ${words}` };
}

/** Opens the envelope both carriers use. */
function opensTo(answer: Answer): unknown {
  if ('refusal' in answer) throw new Refused(answer.refusal);
  return answer.value;
}

function isAnswer(data: unknown): data is Answer {
  return typeof data === 'object' && data !== null && ('value' in data || 'refusal' in data);
}

/** The host is gone: it was stopped, or the machine slept. */
export const AWAY: Refusal = {
  kind: 'broken',
  words:
    'The studio’s host does not answer. Start it again and open the address it prints: this window then goes on where it is.',
};

/** The host was started anew and does not know this window: its new address lets the whole browser in again. */
const NOT_LET_IN: Refusal = {
  kind: 'broken',
  words:
    'The studio’s host was started again. Open the address it printed in this browser, in a window beside this one; this window then goes on where it is.',
};

/** Whether these words say that the host cannot be reached. */
export function isAway(words: string): boolean {
  return words === AWAY.words || words === NOT_LET_IN.words;
}

/** Carries calls over HTTP to the host that served this page. */
export function overHttp(fetcher: typeof fetch = (input, init) => fetch(input, init)): Carry {
  return async (name, args) => {
    const response = await fetcher(`/call/${name}`, {
      method: 'POST',
      credentials: 'same-origin',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(args),
    }).catch(() => {
      throw new Refused(AWAY);
    });
    if (response.status === 403) throw new Refused(NOT_LET_IN);
    const answer: unknown = await response.json().catch(() => null);
    return opensTo(isAnswer(answer) ? answer : { refusal: AWAY });
  };
}

/** Carries calls over the bridge of the desktop window. */
export function overBridge(bridge: Bridge): Carry {
  return async (name, args) => opensTo(await bridge.call(name, args));
}

/** The host as the typed calls of the contract. */
export function hostBy(carry: Carry): Contract {
  const calls = Object.keys(CALLS).map((name) => [
    name,
    (...args: readonly unknown[]) => carry(name as keyof Contract, args),
  ]);
  return Object.fromEntries(calls) as Contract;
}

/** What the desktop window offers; a browser tab has none. */
export function bridge(): Bridge | undefined {
  return (window as Window & { readonly piecewright?: Bridge }).piecewright;
}

/** The host of this window: the desktop's when there is one, otherwise the one that served the page. */
export function connect(): Contract {
  const desktop = bridge();
  return hostBy(desktop === undefined ? overHttp() : overBridge(desktop));
}
