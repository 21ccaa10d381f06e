import type { Refusal } from '../../shared/contract.ts';

/** How the proof of one fabric's plan in one size stands; nothing of it is kept but the plan. */
export type Proving =
  | { readonly state: 'proving'; readonly progress: number; readonly doing: string; readonly stop: () => void }
  | { readonly state: 'refused'; readonly refusal: Refusal }
  /** `better`: how many inches shorter it is than the plan before, 0 when only more is known of it. */
  | { readonly state: 'done'; readonly better: number; readonly proven: boolean };
