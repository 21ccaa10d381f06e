import type { PublishRequest, Refusal } from '../../shared/contract.ts';

/** What the worker is told. */
export type ToWorker =
  | { readonly kind: 'make'; readonly number: number; readonly request: PublishRequest }
  | { readonly kind: 'stop'; readonly number: number };

/** What the worker tells. `broken` is a bug, with what is known of it. */
export type FromWorker =
  | { readonly kind: 'progress'; readonly number: number; readonly progress: number; readonly doing: string }
  | { readonly kind: 'made'; readonly number: number; readonly name: string; readonly pdf: Uint8Array }
  | { readonly kind: 'refused'; readonly number: number; readonly refusal: Refusal }
  | { readonly kind: 'broken'; readonly number: number; readonly trace: string };
