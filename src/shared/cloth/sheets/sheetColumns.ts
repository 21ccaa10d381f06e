import { type Column, enter, ownStrips, prices } from '../strips/basis.ts';
import type { Kind } from '../strips/kinds.ts';
import { type Priced, priciest, type SheetSides } from './priciest.ts';
import type { CutSheet } from './sheet.ts';

/** What generating sheets gives: a bound, what pieces are worth, and sheets cut so many times (not whole numbers). */
export interface SheetColumns {
  readonly bound: number;
  readonly worth: readonly number[];
  readonly sheets: readonly { readonly cut: CutSheet; readonly each: Float64Array; readonly times: number }[];
}

interface SheetColumn extends Column {
  readonly cut: CutSheet;
}

/** Basic operations that generating may spend: some tens of milliseconds. */
const EFFORT = 12_000_000;

/**
 * No plan of sheets that are cut into strips takes fewer than this, by column generation as for strips (`strips/columns.ts`,
 * with the reason why the bound holds wherever it stops: Farley 1990). Here every sheet costs the same, and what one holds is found exactly.
 */
export function generateSheets(ways: SheetSides): SheetColumns {
  const { kinds } = ways;
  const demand = kinds.map(({ count }) => count);
  const basis = ownStrips(
    kinds.map((_, kind) => columnOf(priciest(ways, only(kinds, kind)))),
    demand,
  );
  let bound = 0;
  let worth: readonly number[] = kinds.map(area);
  for (let work = 0; work < EFFORT; ) {
    const y = [...prices(basis)].map((price) => Math.max(0, price));
    const dearest = priciest(ways, y);
    work += dearest.work + 2 * kinds.length ** 2 + 2000;
    const total = demand.reduce((sum, n, kind) => sum + n * (y[kind] as number), 0);
    const reached = total / Math.max(1, dearest.worth);
    if (reached > bound) [bound, worth] = [reached, y];
    if (dearest.worth <= 1 + 1e-7 || !enter(basis, columnOf(dearest))) break;
  }
  const sheets = basis.columns.map((column, row) => {
    return { cut: (column as SheetColumn).cut, each: column.each, times: basis.cut[row] as number };
  });
  // What the programme gives away is still worth placing.
  const placed = worth.map((price, kind) => Math.max(price, LEAST_WORTH * area(kinds[kind] as Kind)));
  return { bound: ways.exact ? Math.ceil(bound - 1e-6) : 0, worth: placed, sheets };
}

/** The least a piece is worth to whoever fills sheets, for each square inch of it; sheets are worth 1. */
const LEAST_WORTH = 1e-6;

function area({ width, height }: Kind): number {
  return width * height;
}

function only(kinds: readonly Kind[], kind: number): readonly number[] {
  return kinds.map((_, other) => (other === kind ? 1 : 0));
}

function columnOf({ each, cut }: Priced): SheetColumn {
  return { cost: 1, each, counts: NONE, cut };
}

const NONE = new Int32Array(0);
