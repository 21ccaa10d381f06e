import { type Inches, longer } from '../../measure/inches.ts';
import { type Filling, fill } from '../strips/fill.ts';
import { type Grid, gridOf } from '../strips/grid.ts';
import { type Kind, type Laid, type Lie, type Packed, packed } from '../strips/kinds.ts';
import type { CutSheet, Sheet } from './sheet.ts';

/** One way of laying strips on a sheet, and all that may lie in them. */
interface Side {
  readonly lengthwise: boolean;
  /** Lowest first. */
  readonly lies: readonly Lie[];
  readonly across: Grid;
  /** Heights of strips, lowest first; for each the last lie that is no taller. */
  readonly heights: readonly { readonly height: Inches; readonly last: number }[];
  readonly along: Grid;
}

/** A sheet's strips both ways, ready to be filled at any prices. */
export interface SheetSides {
  readonly kinds: readonly Kind[];
  readonly sides: readonly Side[];
  /** Whether all lengths lie on common marks, so that the dearest filling is exactly the dearest. */
  readonly exact: boolean;
}

export function sidesOf(kinds: readonly Kind[], sheet: Sheet): SheetSides {
  const sides = [false, true].map((lengthwise) => sideOf(kinds, sheet, lengthwise));
  return { kinds, sides, exact: sides.every(({ across, along }) => across.exact && along.exact) };
}

function sideOf(kinds: readonly Kind[], sheet: Sheet, lengthwise: boolean): Side {
  const [width, height] = lengthwise ? [sheet.height, sheet.width] : [sheet.width, sheet.height];
  const lies = kinds.flatMap((kind, index) => liesOn(kind, index, lengthwise));
  const fitting = lies.filter((lie) => !longer(lie.width, width) && !longer(lie.height, height));
  fitting.sort((a, b) => a.height - b.height || a.width - b.width || a.kind - b.kind);
  const heights: { height: Inches; last: number }[] = [];
  fitting.forEach((lie, last) => {
    const before = heights.at(-1);
    if (before !== undefined && lie.height - before.height < 1e-9) before.last = last;
    else heights.push({ height: lie.height, last });
  });
  const across = gridOf(
    fitting.map((lie) => lie.width),
    width,
  );
  const along = gridOf(
    heights.map((one) => one.height),
    height,
  );
  return { lengthwise, lies: fitting, across, heights, along };
}

function liesOn({ width, height, turns, count }: Kind, kind: number, lengthwise: boolean): readonly Lie[] {
  if (count === 0) return [];
  const [w, h] = lengthwise ? [height, width] : [width, height];
  const usual = { kind, turned: false, width: w, height: h };
  return turns && w !== h ? [usual, { kind, turned: true, width: h, height: w }] : [usual];
}

/** One sheet at some prices: what it is worth, what it holds of every kind, how it is cut. */
export interface Priced {
  readonly worth: number;
  readonly each: Float64Array;
  readonly cut: CutSheet;
  readonly work: number;
}

/**
 * The sheet worth most at these prices, of all that are cut into strips one way or the other (Gilmore and Gomory,
 * "Multistage cutting stock problems of two and more dimensions", 1965): for every height of strip the pieces worth most side
 * by side, then the strips worth most one upon another. A kind may be in it more often than it is wanted.
 */
export function priciest({ kinds, sides }: SheetSides, prices: readonly number[]): Priced {
  const [first, second] = sides.map((side) => pricedSide(side, kinds, prices)) as [Priced, Priced];
  const best = second.worth > first.worth + 1e-9 ? second : first;
  return { ...best, work: first.work + second.work };
}

function pricedSide(side: Side, kinds: readonly Kind[], prices: readonly number[]): Priced {
  const { lies, across, heights, along } = side;
  const filling = fill(
    lies.map(({ kind }, i) => ({
      width: across.widths[i] as number,
      value: prices[kind] as number,
      most: kinds[kind]?.count ?? 0,
    })),
    across.capacity,
  );
  const stacked = fill(
    heights.map(({ last }, i) => ({
      width: along.widths[i] as number,
      value: filling.best(last),
      most: Math.floor(along.capacity / (along.widths[i] as number)),
    })),
    along.capacity,
  );
  const top = heights.length - 1;
  const strips = top < 0 ? [] : cutStrips(side, filling, stacked.counts(top));
  const each = new Float64Array(kinds.length);
  for (const { laid, times } of strips)
    for (const { lie, count } of laid) each[lie.kind] = (each[lie.kind] as number) + count * times;
  const cut = { lengthwise: side.lengthwise, strips, times: 1 };
  return { worth: top < 0 ? 0 : stacked.best(top), each, cut, work: filling.work + stacked.work };
}

function cutStrips({ lies, heights }: Side, filling: Filling, times: Int32Array): readonly Packed[] {
  return heights.flatMap(({ last }, i) => {
    const many = times[i] as number;
    if (many === 0) return [];
    const counts = filling.counts(last);
    const laid = lies.map((lie, k): Laid => ({ lie, count: counts[k] as number }));
    return [packed(laid, many)];
  });
}
