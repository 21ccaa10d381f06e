import type { Finding } from '../../shared/measure/finding.ts';
import type { Recipe } from '../../shared/recipe/schema.ts';

/** What the host asks of the thread that works at recipes; `begin` is the first of all. */
export type ToRecipes =
  | { readonly kind: 'begin'; readonly folder: string }
  | { readonly kind: 'ready'; readonly number: number }
  | {
      readonly kind: 'check';
      readonly number: number;
      readonly recipes: readonly Recipe[];
      readonly places: readonly string[];
    };

export type FromRecipes =
  | { readonly kind: 'ready'; readonly number: number }
  | { readonly kind: 'checked'; readonly number: number; readonly findings: readonly Finding[] }
  | { readonly kind: 'broken'; readonly number: number; readonly trace: string }
  /** Something went wrong with one recipe; the others go on. */
  | { readonly kind: 'report'; readonly trace: string };
