import { count } from '../measure/traced.ts';
import type { Fabric } from '../pattern/schema.ts';
import type { PieceLine, SheetNeed, Strip } from './cloth.ts';
import type { LetteredKind } from './planPieces.ts';
import { fitsSheet, planSheets } from './sheets/planSheets.ts';
import type { Packed } from './strips/kinds.ts';

/** Lines that can be cut from sheets, and the rest. */
export interface Parted {
  readonly inSheets: readonly PieceLine[];
  readonly rest: readonly PieceLine[];
}

/** Pieces that fit a sheet of this fabric; strips across the cloth and what is larger have to come from yardage. */
export function partedFor(lines: readonly PieceLine[], sheet: Fabric['sheet']): Parted {
  if (sheet === undefined) return { inSheets: [], rest: lines };
  const fits = (line: PieceLine) => line.cutAs === 'piece' && fitsSheet(kindOf(line), sheet);
  return { inSheets: lines.filter(fits), rest: lines.filter((line) => !fits(line)) };
}

/** A print that has a direction stands along the sheet's width: sheets are named by how much of the cloth's length they are first. */
function kindOf(line: PieceLine): LetteredKind {
  const { letter, width, height, count: many, upright, lengthwise } = line;
  if (upright) {
    const [stands, lies] = lengthwise ? [width, height] : [height, width];
    return { letter, width: stands.value, height: lies.value, count: many.value, turns: false };
  }
  return { letter, width: width.value, height: height.value, count: many.value, turns: true };
}

/** The sheets these pieces take, and how each is cut. */
export function sheetNeed(lines: readonly PieceLine[], sheet: NonNullable<Fabric['sheet']>): SheetNeed {
  const kinds = lines.map(kindOf);
  const plan = planSheets(kinds, sheet);
  const area = kinds.reduce((sum, kind) => sum + kind.width * kind.height * kind.count, 0);
  return {
    ...sheet,
    count: count(plan.count, plan.count === 1 ? sheet.name : `${sheet.name}s`),
    bound: plan.bound,
    proven: plan.proven,
    plans: plan.sheets.map(({ times, lengthwise, strips }) => ({
      times,
      lengthwise,
      strips: strips.map((strip) => lettered(strip, kinds)),
    })),
    used: plan.count === 0 ? 1 : area / (plan.count * sheet.width * sheet.height),
  };
}

function lettered({ height, laid, times }: Packed, kinds: readonly LetteredKind[]): Strip {
  const pieces = laid.map(({ lie, count: many }) => {
    return { letter: kinds[lie.kind]?.letter ?? '', width: lie.width, height: lie.height, count: many };
  });
  return { height, pieces, times };
}
