import type { Step } from '../../../shared/measure/steps.ts';
import type { JobName } from './jobs.ts';

/** What the window says to a thread. */
export type ToThread =
  | { readonly kind: 'do'; readonly number: number; readonly name: JobName; readonly args: readonly unknown[] }
  | { readonly kind: 'stop'; readonly number: number };

/** What a thread answers; one that was stopped says so, to show that it is free again. */
export type FromThread =
  | { readonly kind: 'step'; readonly number: number; readonly step: Step }
  | { readonly kind: 'done'; readonly number: number; readonly answer: unknown }
  | { readonly kind: 'stopped'; readonly number: number }
  | { readonly kind: 'broken'; readonly number: number; readonly words: string; readonly trace: string };
