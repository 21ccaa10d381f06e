import { type Inches, longer } from '../../measure/inches.ts';

/** Equal pieces to be cut from one cloth. */
export interface Kind {
  /** Along the strip, as the piece is usually laid. */
  readonly width: Inches;
  /** Across the strip. */
  readonly height: Inches;
  readonly count: number;
  /** Whether it may be laid the other way round: not when the print has a direction. */
  readonly turns: boolean;
}

/** One way a kind may lie in a strip. */
export interface Lie {
  /** Index of the kind. */
  readonly kind: number;
  readonly turned: boolean;
  readonly width: Inches;
  readonly height: Inches;
}

/** So many pieces, lying so, side by side in one strip. */
export interface Laid {
  readonly lie: Lie;
  readonly count: number;
}

/** A strip as tall as its tallest piece, and how many are cut alike. */
export interface Packed {
  readonly height: Inches;
  readonly laid: readonly Laid[];
  readonly times: number;
}

/** Every way the kinds can lie on a cloth of this usable width, lowest first. */
export function liesOf(kinds: readonly Kind[], width: Inches): readonly Lie[] {
  const lies = kinds.flatMap((kind, index): Lie[] => {
    const usual = { kind: index, turned: false, width: kind.width, height: kind.height };
    const other = { kind: index, turned: true, width: kind.height, height: kind.width };
    const square = kind.width === kind.height;
    return (kind.turns && !square ? [usual, other] : [usual]).filter((lie) => !longer(lie.width, width));
  });
  return lies.sort((a, b) => a.height - b.height || a.width - b.width || a.kind - b.kind);
}

/** The length of cloth the strips take. */
export function lengthOf(strips: readonly Packed[]): Inches {
  return strips.reduce((total, strip) => total + strip.height * strip.times, 0);
}

/** How much there is to read in a plan: one for each different strip and each different piece in it. */
export function wordsIn(strips: readonly Packed[]): number {
  return strips.reduce((total, strip) => total + 1 + strip.laid.length, 0);
}

/** A strip of these pieces, the tallest first; pieces of one lie are gathered. */
export function packed(laid: readonly Laid[], times: number): Packed {
  const gathered = new Map<Lie, number>();
  for (const { lie, count } of laid) if (count > 0) gathered.set(lie, (gathered.get(lie) ?? 0) + count);
  const sorted = [...gathered].map(([lie, count]) => ({ lie, count }));
  sorted.sort((a, b) => b.lie.height - a.lie.height || b.lie.width - a.lie.width || a.lie.kind - b.lie.kind);
  return { height: sorted[0]?.lie.height ?? 0, laid: sorted, times };
}
