import type { PatternCard, RecipeCard } from '../../shared/contract.ts';

/** What is picked on the shelf. */
export type Picked =
  | { readonly kind: 'pattern'; readonly card: PatternCard }
  | { readonly kind: 'recipe'; readonly card: RecipeCard };

/** Names what is picked by what stays the same when the shelf is asked for again. */
export type PickedId = { readonly kind: Picked['kind']; readonly id: string };
