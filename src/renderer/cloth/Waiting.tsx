import type { Asked } from '../state/away/useAway.ts';

/** That an answer is being worked out, or why there is none; nothing once it is there. */
export function Waiting({ asked }: { readonly asked: Asked<unknown> }) {
  if (asked.trouble !== null) return <p role="alert">{asked.trouble}</p>;
  return asked.answer === null ? <p className="quiet">Being worked out…</p> : null;
}
