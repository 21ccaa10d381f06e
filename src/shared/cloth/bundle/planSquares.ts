import { type Inches, longer, same } from '../../measure/inches.ts';
import type { Value } from '../../recipe/schema.ts';
import { fillSheets } from '../sheets/fillSheets.ts';
import { planSheets } from '../sheets/planSheets.ts';
import type { CutSheet, Sheet } from '../sheets/sheet.ts';
import { sheetBound } from '../sheets/sheetBound.ts';
import { binBound } from '../strips/binBound.ts';
import { areaOf, fitsSquare, type Holds, holdsOn, kindsOf } from './squares.ts';
import type { Group, Wants } from './wants.ts';

/** Squares of one value as they are planned without regard to where the pieces go. */
export interface SquaresPlan {
  readonly fits: readonly Group[];
  /** Groups that are more than one square. */
  readonly lost: readonly Group[];
  /** For each group, which of the different pieces it is: groups of several pieces are cut out in one. */
  readonly pieceOf: readonly number[];
  /** The pieces of each square, and how they lie on it. */
  readonly packs: readonly SquarePack[];
  /** No fewer squares hold all pieces. */
  readonly least: number;
  /** No fewer squares keep a fabric from coming twice into a block: the most groups that one block has. */
  readonly inOneBlock: number;
  readonly holds: Holds;
}

/** One planned square. */
export interface SquarePack {
  readonly pieces: readonly number[];
  readonly cut: CutSheet;
}

/** What was planned before for the same wants: whoever looks for the fewest squares asks for one value many times. */
const allPlanned = new WeakMap<Wants, Map<string, SquaresPlan>>();

/** @param side of a square, inches */
export function planSquares(wants: Wants, value: Value, side: Inches): SquaresPlan {
  const planned = allPlanned.get(wants) ?? new Map<string, SquaresPlan>();
  allPlanned.set(wants, planned);
  const key = `${value} ${side}`;
  const plan = planned.get(key) ?? planOf(wants, value, side);
  planned.set(key, plan);
  return plan;
}

function planOf(wants: Wants, value: Value, side: Inches): SquaresPlan {
  const groups = wants.groups.filter((group) => group.value === value);
  const fits = groups.filter((group) => fitsSquare(group, side));
  const lost = groups.filter((group) => !fits.includes(group));
  const sheet = { width: side, height: side };
  const kinds = kindsOf(fits);
  // Pieces by themselves are no harder to place than groups of them, so what they take at the least groups do, too.
  const { bound } = planSheets(kinds, sheet);
  const packings = SHAPES.map((shape) => packed(fits, sheet, shape));
  const [first, ...others] = packings;
  const fewest = others.reduce((a, b) => (b.packs.length < a.packs.length ? b : a), first as Packing);
  return {
    ...{ fits, lost, ...fewest, inOneBlock: mostInOneBlock(fits), holds: holdsOn(side) },
    least: Math.max(sheetBound(kinds, sheet), byArea(fits, side), bound),
  };
}

interface Packing {
  readonly pieceOf: readonly number[];
  readonly packs: readonly SquarePack[];
}

/** Squares of groups, each group cut out in one rectangle first. */
export function packed(groups: readonly Group[], sheet: Sheet, shape: Shape): Packing {
  const kinds: { width: number; height: number; count: number; turns: true }[] = [];
  const pieceOf = groups.map((group) => {
    const { width, height } = outlineOf(group, sheet, shape);
    const known = kinds.findIndex((kind) => same(kind.width, width) && same(kind.height, height));
    const kind = kinds[known];
    if (kind === undefined) return kinds.push({ width, height, count: 1, turns: true }) - 1;
    kind.count += 1;
    return known;
  });
  const packs = planSheets(kinds, sheet).sheets.flatMap((cut) => {
    const pieces = cut.strips.flatMap((strip) =>
      strip.laid.flatMap(({ lie, count }) => new Array<number>(count * strip.times).fill(lie.kind)),
    );
    return new Array<SquarePack>(cut.times).fill({ pieces, cut });
  });
  return { pieceOf, packs };
}

/** How equal pieces of a group lie in its rectangle: side by side along their longer sides or their shorter ones, or in two rows. */
type Shape = 'long' | 'broad' | 'two rows';
const SHAPES: readonly Shape[] = ['broad', 'long', 'two rows'];

/** The rectangle that a group is cut out in before its pieces are parted. */
function outlineOf(group: Group, sheet: Sheet, shape: Shape): Sheet {
  const kinds = kindsOf([group]);
  const [kind] = kinds;
  if (kind !== undefined && kinds.length === 1) {
    const { count } = kind;
    const [long, short] = [Math.max(kind.width, kind.height), Math.min(kind.width, kind.height)];
    const rows = shape === 'two rows' && count > 2 ? 2 : 1;
    const each = Math.ceil(count / rows);
    const outline =
      shape === 'long' ? { width: long * each, height: short } : { width: long * rows, height: short * each };
    if (!longer(outline.width, sheet.width) && !longer(outline.height, sheet.height)) return outline;
  }
  const [cut] = fillSheets(kinds, sheet);
  const strips = cut?.strips ?? [];
  const reach = strips.map(({ laid }) => laid.reduce((sum, { lie, count }) => sum + lie.width * count, 0));
  return { width: Math.max(0, ...reach), height: strips.reduce((sum, { height, times }) => sum + height * times, 0) };
}

/** Sixty-fourths of an inch, squared: areas as whole numbers, taken down so that the bound holds. */
const AREA_MARKS = 4096;

/** Groups cannot be parted, so no fewer squares hold them than stocks hold lengths like their areas. */
function byArea(groups: readonly Group[], side: Inches): number {
  const areas = new Map<number, number>();
  for (const group of groups) {
    const area = Math.floor(areaOf(group) * AREA_MARKS + 1e-6);
    if (area > 0) areas.set(area, (areas.get(area) ?? 0) + 1);
  }
  const lengths = [...areas].map(([length, count]) => ({ length, count }));
  return binBound(lengths, Math.ceil(side * side * AREA_MARKS - 1e-6));
}

function mostInOneBlock(groups: readonly Group[]): number {
  const many = new Map<number, number>();
  for (const { place } of groups) if (place !== null) many.set(place, (many.get(place) ?? 0) + 1);
  return Math.max(0, ...many.values());
}
