import type { Kind } from '../strips/kinds.ts';
import { fillSheets } from './fillSheets.ts';
import { sidesOf } from './priciest.ts';
import type { CutSheet, Sheet } from './sheet.ts';
import { generateSheets } from './sheetColumns.ts';

/** Plans and a bound. */
export interface Searched {
  readonly plans: readonly (readonly CutSheet[])[];
  readonly bound: number;
}

/** More kinds than this are planned in one pass, in no time. */
const MOST_KINDS = 40;
/** Plans built one after another with corrected prices, and basic steps they may take together. */
const ROUNDS = 16;
const STEPS = [0.5, 0.3, 0.7, 0.2, 0.4];
/** Kinds looked at times sheets filled, over all rounds: what keeps the search within a hundred milliseconds. */
const EFFORT = 4000;

/**
 * Looks for plans with fewer sheets: the sheets of the linear programme as often as they go whole, and what is left filled at its
 * prices; then plan after plan, a piece's worth moved towards the share of a sheet that it really took (sequential
 * value correction, as in `strips/correct.ts`). Ends when a plan takes no more than the bound.
 * @param least sheets that are needed however they are cut
 * @param most sheets of the plan there is
 */
export function searchSheets(kinds: readonly Kind[], sheet: Sheet, least: number, most: number): Searched {
  const wanted = kinds.filter(({ count }) => count > 0);
  if (wanted.length !== kinds.length || kinds.length > MOST_KINDS || least >= most) return { plans: [], bound: least };
  const { bound: own, worth, sheets } = generateSheets(sidesOf(kinds, sheet));
  const bound = Math.max(least, own);
  const plans: (readonly CutSheet[])[] = [];
  let fewest = most;
  const offer = (plan: readonly CutSheet[]) => {
    plans.push(plan);
    fewest = Math.min(fewest, countOf(plan));
  };
  if (fewest > bound) offer(roundedDown(kinds, sheet, sheets, worth));
  let prices = worth;
  const rounds = Math.min(ROUNDS, Math.ceil(EFFORT / (kinds.length * most)));
  for (let round = 0; round < rounds && fewest > bound; round++) {
    const plan = fillSheets(kinds, sheet, prices);
    offer(plan);
    prices = corrected(kinds, plan, prices, STEPS[round % STEPS.length] as number);
  }
  return { plans, bound };
}

/** Sheets as often as they go whole; what is then left, sheet after sheet. */
function roundedDown(
  kinds: readonly Kind[],
  sheet: Sheet,
  sheets: ReturnType<typeof generateSheets>['sheets'],
  worth: readonly number[],
): readonly CutSheet[] {
  const left = kinds.map(({ count }) => count);
  const whole = sheets.flatMap(({ cut, each, times }) => {
    const room = each.reduce(
      (most, n, kind) => (n > 0 ? Math.min(most, Math.floor((left[kind] as number) / n)) : most),
      Math.floor(times + 1e-6),
    );
    if (room <= 0) return [];
    each.forEach((n, kind) => {
      left[kind] = (left[kind] as number) - n * room;
    });
    return [{ ...cut, times: room }];
  });
  const rest = kinds.map((kind, i) => ({ ...kind, count: left[i] as number }));
  return [...whole, ...fillSheets(rest, sheet, worth)];
}

function corrected(
  kinds: readonly Kind[],
  plan: readonly CutSheet[],
  prices: readonly number[],
  step: number,
): readonly number[] {
  const took = new Array<number>(kinds.length).fill(0);
  for (const { strips, times } of plan) {
    const laid = strips.flatMap((strip) => strip.laid.map((one) => ({ ...one, count: one.count * strip.times })));
    const area = laid.reduce((sum, { lie, count }) => sum + lie.width * lie.height * count, 0);
    for (const { lie, count } of laid) {
      took[lie.kind] = (took[lie.kind] as number) + (times * count * lie.width * lie.height) / area;
    }
  }
  return prices.map((price, kind) => (1 - step) * price + (step * (took[kind] as number)) / (kinds[kind]?.count ?? 1));
}

/** How many sheets a plan takes. */
export function countOf(sheets: readonly CutSheet[]): number {
  return sheets.reduce((sum, { times }) => sum + times, 0);
}
