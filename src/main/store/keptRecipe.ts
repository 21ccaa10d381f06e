/** A recipe as it is kept: the saved document's text, its revision, and whether it came with the program. */
export interface KeptRecipe {
  readonly id: string;
  readonly starter: boolean;
  readonly revision: number;
  readonly body: string;
}

/** A kept recipe with the titles of the patterns that carry it. */
export interface FoundRecipe extends KeptRecipe {
  readonly usedIn: readonly string[];
}

/** A `RecipeSearch` as it came in from outside. */
export interface RecipeQuery {
  readonly words: string;
  readonly tag?: string | undefined;
  readonly facets?: readonly string[] | undefined;
  readonly from?: number | undefined;
  readonly atMost?: number | undefined;
}

/** A row of the table `recipe`. */
export interface Row {
  readonly id: string;
  readonly starter: number;
  readonly revision: number;
  readonly body: string;
}

/** A row as it is given out. */
export function keptOf({ starter, ...row }: Row): KeptRecipe {
  return { ...row, starter: starter === 1 };
}
