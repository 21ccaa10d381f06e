import type { UnitKey } from '../../shared/piecing/piecing.ts';

/** What the designer has picked; the side panel is about it. */
export type Selection =
  | { readonly kind: 'pattern' }
  | { readonly kind: 'size'; readonly size: string }
  | { readonly kind: 'block'; readonly block: string }
  | { readonly kind: 'unit'; readonly block: string; readonly unit: UnitKey }
  | { readonly kind: 'place'; readonly column: number; readonly row: number }
  | { readonly kind: 'border'; readonly border: string }
  | { readonly kind: 'fabric'; readonly fabric: string }
  | { readonly kind: 'piece'; readonly letter: string };

/** Nothing in particular: the pattern as a whole. */
export const WHOLE_PATTERN: Selection = { kind: 'pattern' };
