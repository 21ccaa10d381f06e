import { type Inches, longer } from '../../measure/inches.ts';
import { fill } from '../strips/fill.ts';
import { gridOf } from '../strips/grid.ts';
import { type Kind, type Laid, type Lie, type Packed, packed } from '../strips/kinds.ts';
import type { CutSheet, Sheet } from './sheet.ts';

/** Heights of strips that are looked at for one sheet at most. */
const MOST_HEIGHTS = 40;

/**
 * Sheet after sheet, each filled with the most valuable strips (Gilmore and Gomory, "Multistage cutting stock problems of two and
 * more dimensions", 1965): for every height of strip the pieces worth most side by side, then the strips worth most one upon
 * another. Strips are taken one at a time, so that no piece is cut more often than it is wanted. A sheet is cut as often
 * as the counts allow.
 */
export function fillSheets(kinds: readonly Kind[], sheet: Sheet): readonly CutSheet[] {
  const left = kinds.map(({ count }) => count);
  const sheets: CutSheet[] = [];
  while (left.some((n) => n > 0)) {
    const ways = [false, true].map((lengthwise) => oneSheet(kinds, left, sheet, lengthwise));
    const best = ways.reduce((a, b) => (areaOf(b) > areaOf(a) + 1e-9 ? b : a));
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

function oneSheet(kinds: readonly Kind[], left: readonly number[], sheet: Sheet, lengthwise: boolean): CutSheet {
  const [across, along] = lengthwise ? [sheet.height, sheet.width] : [sheet.width, sheet.height];
  const rest = [...left];
  const strips: Packed[] = [];
  for (let room = along; ; ) {
    const strip = bestStrip(kinds, rest, across, room, lengthwise);
    if (strip === null) break;
    strips.push(strip);
    room -= strip.height;
    for (const { lie, count } of strip.laid) rest[lie.kind] = (rest[lie.kind] as number) - count;
  }
  return { lengthwise, strips, times: 1 };
}

/** The strip that uses most of the cloth it takes, of those no taller than the room that is left. */
function bestStrip(
  kinds: readonly Kind[],
  left: readonly number[],
  across: Inches,
  room: Inches,
  lengthwise: boolean,
): Packed | null {
  const lies = liesIn(kinds, left, across, room, lengthwise);
  const heights = [...new Set(lies.map((lie) => lie.height))].sort((a, b) => b - a).slice(0, MOST_HEIGHTS);
  let best: { strip: Packed; used: number } | null = null;
  for (const height of heights) {
    const strip = filled(lies, left, across, height, kinds);
    const used = areaIn([strip]) / (strip.height * across);
    // Where two use their cloth alike the taller one goes first: lower ones find room later.
    if (best === null || used > best.used + 1e-9) best = { strip, used };
  }
  return best?.strip ?? null;
}

function liesIn(
  kinds: readonly Kind[],
  left: readonly number[],
  across: Inches,
  room: Inches,
  lengthwise: boolean,
): readonly Lie[] {
  return kinds.flatMap((kind, index): Lie[] => {
    if ((left[index] as number) === 0) return [];
    const usual = { kind: index, turned: false, width: kind.width, height: kind.height };
    const other = { kind: index, turned: true, width: kind.height, height: kind.width };
    const seen = kind.turns ? [usual, other] : [usual];
    const laid = lengthwise ? seen.map((lie) => ({ ...lie, width: lie.height, height: lie.width })) : seen;
    return laid.filter((lie) => !longer(lie.width, across) && !longer(lie.height, room));
  });
}

/** The most valuable filling of a strip of this height: each kind lies its narrowest way that is no taller. */
function filled(
  lies: readonly Lie[],
  left: readonly number[],
  across: Inches,
  height: Inches,
  kinds: readonly Kind[],
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
    value: (kinds[lie.kind] as Kind).width * (kinds[lie.kind] as Kind).height,
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

function areaOf({ strips }: CutSheet): number {
  return areaIn(strips);
}

function areaIn(strips: readonly Packed[]): number {
  return strips.reduce(
    (sum, { laid, times }) =>
      sum + times * laid.reduce((own, { lie, count }) => own + lie.width * lie.height * count, 0),
    0,
  );
}
