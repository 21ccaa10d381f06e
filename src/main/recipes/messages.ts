import type { Finding } from '../../shared/measure/finding.ts';
import type { Recipe } from '../../shared/recipe/schema.ts';
import type { FileRead } from '../service/recipeWork.ts';

/** What the host asks of the thread that works at recipes; `begin` is the first of all. */
export type ToRecipes =
  | { readonly kind: 'begin'; readonly folder: string }
  | { readonly kind: 'ready'; readonly number: number }
  | { readonly kind: 'read'; readonly number: number; readonly text: string }
  /** A check is no longer wanted. */
  | { readonly kind: 'stop'; readonly number: number }
  | {
      readonly kind: 'check';
      readonly number: number;
      readonly recipes: readonly Recipe[];
      readonly places: readonly string[];
    };

export type FromRecipes =
  | { readonly kind: 'ready'; readonly number: number }
  | { readonly kind: 'read'; readonly number: number; readonly file: FileRead }
  | { readonly kind: 'checking'; readonly number: number; readonly done: number }
  | { readonly kind: 'checked'; readonly number: number; readonly findings: readonly Finding[] }
  | { readonly kind: 'broken'; readonly number: number; readonly trace: string }
  /** Something went wrong with one recipe; the others go on. */
  | { readonly kind: 'report'; readonly trace: string };
