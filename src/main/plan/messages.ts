import type { Kind } from '../../shared/cloth/strips/kinds.ts';
import type { StripPlan } from '../../shared/cloth/strips/planStrips.ts';
import type { Inches } from '../../shared/measure/inches.ts';

/** One plan to be proven. */
export interface ProofRequest {
  readonly kinds: readonly Kind[];
  /** Usable width of the cloth, inches. */
  readonly width: Inches;
  /** What it may take. */
  readonly seconds: number;
}

/** What the thread is told. */
export interface ToProver {
  readonly number: number;
  readonly request: ProofRequest;
}

/**
 * What the thread tells: that it has begun, how near it is with the plan where there is a better one, and at last the plan. `broken`
 * is a bug, with what is known of it.
 */
export type FromProver =
  | { readonly kind: 'begun'; readonly number: number }
  | {
      readonly kind: 'nearer';
      readonly number: number;
      readonly length: Inches;
      readonly bound: Inches;
      readonly plan?: StripPlan;
    }
  | { readonly kind: 'proven'; readonly number: number; readonly plan: StripPlan }
  | { readonly kind: 'broken'; readonly number: number; readonly trace: string };
