import { type Inches, longer } from '../../measure/inches.ts';
import { fill } from '../strips/fill.ts';
import { gridOf } from '../strips/grid.ts';
import { type Kind, type Laid, type Lie, type Packed, packed } from '../strips/kinds.ts';
import type { CutSheet, Sheet } from './sheet.ts';

/** How far one sheet is looked into: heights of strips, and different pieces, the largest first. */
interface Effort {
  readonly heights: number;
  readonly pieces: number;
}

const THOROUGH: Effort = { heights: 40, pieces: Number.POSITIVE_INFINITY };
/** With thousands of different pieces a sheet at a time must be found in no time. */
const QUICK: Effort = { heights: 2, pieces: 30 };
const MANY = 150;

/**
 * Sheet after sheet, each filled with the most valuable strips (Gilmore and Gomory, "Multistage cutting stock problems of two and
 * more dimensions", 1965): for every height of strip the pieces worth most side by side, then the strips worth most one upon
 * another. Strips are taken one at a time, so that no piece is cut more often than it is wanted. A sheet is cut as often
 * as the counts allow.
 * @param worth of one piece of each kind; left out, its area
 */
export function fillSheets(
  kinds: readonly Kind[],
  sheet: Sheet,
  worth: readonly number[] = kinds.map(area),
): readonly CutSheet[] {
  const left = kinds.map(({ count }) => count);
  const effort = kinds.length > MANY ? QUICK : THOROUGH;
  const order = kinds.map((_, i) => i);
  if (effort === QUICK) order.sort((a, b) => area(kinds[b] as Kind) - area(kinds[a] as Kind));
  const pile: Pile = { kinds, order, effort, worth };
  const sheets: CutSheet[] = [];
  while (left.some((n) => n > 0)) {
    const ways = [false, true].map((lengthwise) => oneSheet(pile, left, sheet, lengthwise));
    const best = ways.reduce((a, b) => (worthOf(b, worth) > worthOf(a, worth) + 1e-9 ? b : a));
    const each = takenBy(best, kinds.length);
    const times = Math.min(
      ...each.map((n, i) => (n > 0 ? Math.floor((left[i] as number) / n) : Number.POSITIVE_INFINITY)),
    );
    each.forEach((n, i) => {
      left[i] = (left[i] as number) - n * times;
    });
    sheets.push({ ...best, times });
  }
  return sheets;
}

/** What is to be cut, in the order in which it is looked at. */
interface Pile {
  readonly kinds: readonly Kind[];
  readonly order: readonly number[];
  readonly effort: Effort;
  /** What one piece of each kind is worth. */
  readonly worth: readonly number[];
}

function area({ width, height }: Kind): number {
  return width * height;
}

function oneSheet(pile: Pile, left: readonly number[], sheet: Sheet, lengthwise: boolean): CutSheet {
  const [across, along] = lengthwise ? [sheet.height, sheet.width] : [sheet.width, sheet.height];
  const rest = [...left];
  const strips: Packed[] = [];
  for (let room = along; ; ) {
    const strip = bestStrip(pile, rest, across, room, lengthwise);
    if (strip === null) break;
    strips.push(strip);
    room -= strip.height;
    for (const { lie, count } of strip.laid) rest[lie.kind] = (rest[lie.kind] as number) - count;
  }
  return { lengthwise, strips, times: 1 };
}

/** The strip that uses most of the cloth it takes, of those no taller than the room that is left. */
function bestStrip(
  pile: Pile,
  left: readonly number[],
  across: Inches,
  room: Inches,
  lengthwise: boolean,
): Packed | null {
  const { effort, worth } = pile;
  const lies = liesIn(pile, left, across, room, lengthwise);
  const heights = [...new Set(lies.map((lie) => lie.height))].sort((a, b) => b - a).slice(0, effort.heights);
  let best: { strip: Packed; used: number } | null = null;
  for (const height of heights) {
    const strip = filled(lies, left, across, height, worth);
    const used = worthIn([strip], worth) / (strip.height * across);
    // Where two use their cloth alike the taller one goes first: lower ones find room later.
    if (best === null || used > best.used + 1e-9) best = { strip, used };
  }
  return best?.strip ?? null;
}

function liesIn(
  { kinds, order, effort }: Pile,
  left: readonly number[],
  across: Inches,
  room: Inches,
  lengthwise: boolean,
): readonly Lie[] {
  const found: Lie[] = [];
  let pieces = 0;
  for (const index of order) {
    if (pieces >= effort.pieces) break;
    if ((left[index] as number) === 0) continue;
    const kind = kinds[index] as Kind;
    const usual = { kind: index, turned: false, width: kind.width, height: kind.height };
    const other = { kind: index, turned: true, width: kind.height, height: kind.width };
    const seen = kind.turns ? [usual, other] : [usual];
    const laid = lengthwise ? seen.map((lie) => ({ ...lie, width: lie.height, height: lie.width })) : seen;
    const fits = laid.filter((lie) => !longer(lie.width, across) && !longer(lie.height, room));
    if (fits.length > 0) pieces += 1;
    found.push(...fits);
  }
  return found;
}

/** The most valuable filling of a strip of this height: each kind lies its narrowest way that is no taller. */
function filled(
  lies: readonly Lie[],
  left: readonly number[],
  across: Inches,
  height: Inches,
  worth: readonly number[],
): Packed {
  const narrowest = new Map<number, Lie>();
  for (const lie of lies) {
    if (longer(lie.height, height)) continue;
    const before = narrowest.get(lie.kind);
    if (before === undefined || lie.width < before.width) narrowest.set(lie.kind, lie);
  }
  const chosen = [...narrowest.values()];
  const grid = gridOf(
    chosen.map(({ width }) => width),
    across,
  );
  const choices = chosen.map((lie, i) => ({
    width: grid.widths[i] as number,
    value: worth[lie.kind] as number,
    most: left[lie.kind] as number,
  }));
  const counts = fill(choices, grid.capacity).counts(chosen.length - 1);
  return packed(
    chosen.map((lie, i): Laid => ({ lie, count: counts[i] as number })),
    1,
  );
}

function takenBy({ strips }: CutSheet, kinds: number): readonly number[] {
  const each = new Array<number>(kinds).fill(0);
  for (const { laid, times } of strips)
    for (const { lie, count } of laid) each[lie.kind] = (each[lie.kind] as number) + count * times;
  return each;
}

function worthOf({ strips }: CutSheet, worth: readonly number[]): number {
  return worthIn(strips, worth);
}

function worthIn(strips: readonly Packed[], worth: readonly number[]): number {
  return strips.reduce(
    (sum, { laid, times }) =>
      sum + times * laid.reduce((own, { lie, count }) => own + (worth[lie.kind] as number) * count, 0),
    0,
  );
}
