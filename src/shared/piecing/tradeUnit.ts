import type { Corner } from '../recipe/schema.ts';

/** Names a distinct unit by what it is: kind, size in grid units, roles. Equal keys are the same unit. */
export type UnitKey = string;

export interface UnitShape {
  readonly key: UnitKey;
  /** Grid units, before turning. */
  readonly width: number;
  readonly height: number;
  /** The method the recipe asks for, if it does. */
  readonly method?: string;
}

/** A unit the trade has a name for, lying as the trade draws it. */
export type TradeUnit =
  | (UnitShape & { readonly kind: 'plain'; readonly role: string })
  | (UnitShape & { readonly kind: 'log'; readonly role: string })
  | (UnitShape & { readonly kind: 'hst'; readonly roles: readonly [string, string] })
  | (UnitShape & { readonly kind: 'geese'; readonly roles: readonly [string, string] })
  | (UnitShape & { readonly kind: 'four-patch'; readonly roles: readonly [string, string] })
  | (UnitShape & { readonly kind: 'corners'; readonly role: string; readonly corners: readonly FlippedCorner[] })
  /** A square cut by both diagonals: the triangles top, right, bottom, left. */
  | (UnitShape & { readonly kind: 'qst'; readonly roles: readonly [string, string, string, string] })
  /** Half a square and two quarters: the half bottom right, the quarters top and left. */
  | (UnitShape & { readonly kind: 'three-patch'; readonly roles: readonly [string, string, string] })
  /** A square on its point in a square: `role` in the middle, `roles` clockwise from the top left corner. */
  | (UnitShape & {
      readonly kind: 'square-in-square';
      readonly role: string;
      readonly roles: readonly [string, string, string, string];
    })
  /** A rectangle cut from corner to corner, rising or falling to the right: the upper triangle, then the lower. */
  | (UnitShape & {
      readonly kind: 'half-rectangle';
      readonly diagonal: 'rising' | 'falling';
      readonly roles: readonly [string, string];
    })
  /** Three by three squares: the corners, the middles of the sides, the middle. */
  | (UnitShape & { readonly kind: 'nine-patch'; readonly roles: readonly [string, string, string] })
  /** Equal squares that alternate, more than two by two: the first role top left. */
  | (UnitShape & {
      readonly kind: 'checkerboard';
      readonly columns: number;
      readonly rows: number;
      readonly roles: readonly [string, string];
    })
  /** Equal strips, each as long as the unit is wide, from the top down. */
  | (UnitShape & { readonly kind: 'rails'; readonly roles: readonly string[] })
  /** A quarter of a circle about the top left corner of a square, then the rest. The radius in grid units. */
  | (UnitShape & {
      readonly kind: 'quarter-circle';
      readonly radius: number;
      readonly roles: readonly [string, string];
    });

export interface FlippedCorner {
  readonly at: Corner;
  readonly role: string;
  /** Finished leg of the corner triangle, grid units. */
  readonly size: number;
}

type Keyless<U> = U extends TradeUnit ? Omit<U, 'key'> : never;

/** A unit of the trade that has no name yet. */
export type TradeShape = Keyless<TradeUnit>;
