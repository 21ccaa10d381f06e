import { type Inches, longer } from '../../measure/inches.ts';
import type { Kind, Laid, Packed } from '../strips/kinds.ts';
import { planStrips } from '../strips/planStrips.ts';
import { fillSheets } from './fillSheets.ts';
import { countOf, searchSheets } from './searchSheets.ts';
import type { CutSheet, Sheet } from './sheet.ts';
import { sheetBound } from './sheetBound.ts';

/** How pieces are cut from sheets, with the proof of how few sheets can do. */
export interface SheetPlan {
  readonly sheets: readonly CutSheet[];
  readonly count: number;
  /** No way to cut them in strips takes fewer. */
  readonly bound: number;
  readonly proven: boolean;
}

/**
 * Cuts pieces from as few sheets as it can: each sheet is cut into strips one way or the other, the strips are cut across, and
 * lower pieces are trimmed (guillotine cuts in two stages and a trim). Three ways are tried: strips planned as from a length of
 * cloth and then packed into sheets; sheet by sheet, each filled with as much as it holds; and where these are more than the
 * bound, a search at the prices of the linear programme, which proves as well how few can do.
 * @throws RangeError when a piece is larger than the sheet however it lies
 */
export function planSheets(kinds: readonly Kind[], sheet: Sheet): SheetPlan {
  const lost = kinds.find((kind) => kind.count > 0 && !fitsSheet(kind, sheet));
  if (lost !== undefined) {
    throw new RangeError(
      `A piece ${lost.width} × ${lost.height} is larger than a sheet ${sheet.width} × ${sheet.height}`,
    );
  }
  const bound = sheetBound(kinds, sheet);
  const ways = [false, true].flatMap((lengthwise) => {
    const packed = packedInto(kinds, sheet, lengthwise);
    return packed === null ? [] : [packed];
  });
  const first = [...ways, fillSheets(kinds, sheet)].reduce((a, b) => (better(b, a) ? b : a));
  const searched = searchSheets(kinds, sheet, bound, countOf(first));
  const best = searched.plans.reduce((a, b) => (better(b, a) ? b : a), first);
  const count = countOf(best);
  return { sheets: best, count, bound: searched.bound, proven: count === searched.bound };
}

/** Whether a piece lies on a sheet at all. */
export function fitsSheet({ width, height, turns }: Kind, sheet: Sheet): boolean {
  const lies = (w: Inches, h: Inches) => !longer(w, sheet.width) && !longer(h, sheet.height);
  return lies(width, height) || (turns && lies(height, width));
}

function better(a: readonly CutSheet[], b: readonly CutSheet[]): boolean {
  return countOf(a) - countOf(b) < 0 || (countOf(a) === countOf(b) && a.length < b.length);
}

/** Strips as from a length of cloth, then as few sheets as hold them; null when a piece cannot lie that way. */
function packedInto(kinds: readonly Kind[], sheet: Sheet, lengthwise: boolean): readonly CutSheet[] | null {
  const [across, along] = lengthwise ? [sheet.height, sheet.width] : [sheet.width, sheet.height];
  const lying = kinds.map((kind) => inStrips(kind, across, along, lengthwise));
  if (lying.some((kind, i) => kind === null && (kinds[i]?.count ?? 0) > 0)) return null;
  const asked = lying.flatMap((kind, index) => (kind === null ? [] : [{ kind, index }]));
  const plan = planStrips(
    asked.map(({ kind }) => kind),
    across,
  );
  const strips = plan.strips.map((strip) => renamed(strip, asked));
  const stacked = planStrips(
    strips.map(({ height, times }) => ({ width: height, height: 1, count: times, turns: false })),
    along,
  );
  return stacked.strips.map(({ laid, times }) => ({
    lengthwise,
    times,
    strips: laid.map(({ lie, count }) => ({ ...(strips[lie.kind] as Packed), times: count })),
  }));
}

/** The kind as it may lie in strips of a sheet: along the strip, no taller than the sheet. Null when it cannot. */
function inStrips(kind: Kind, across: Inches, along: Inches, lengthwise: boolean): Kind | null {
  const [width, height] = lengthwise ? [kind.height, kind.width] : [kind.width, kind.height];
  const usual = !longer(width, across) && !longer(height, along);
  const other = kind.turns && !longer(height, across) && !longer(width, along);
  if (usual) return { ...kind, width, height, turns: other };
  return other ? { ...kind, width: height, height: width, turns: false } : null;
}

function renamed(strip: Packed, asked: readonly { readonly index: number }[]): Packed {
  const laid = strip.laid.map(
    ({ lie, count }): Laid => ({ lie: { ...lie, kind: asked[lie.kind]?.index ?? lie.kind }, count }),
  );
  return { ...strip, laid };
}
