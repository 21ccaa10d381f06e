import { arcBetween } from '../drawing/curve.ts';
import type { Drawing } from '../drawing/drawing.ts';
import { edgesOf } from '../drawing/vertex.ts';
import type { Inches } from '../measure/inches.ts';
import { CENTIMETRE, type Units } from '../measure/metric.ts';
import { seamCensus } from '../piecing/census.ts';
import { lower } from '../piecing/lower.ts';
import type { RecipeBook } from '../piecing/lowering.ts';
import type { MethodId } from '../piecing/method.ts';
import { METHODS, methodsFor } from '../piecing/methods/index.ts';
import type { Piecing, Unit } from '../piecing/piecing.ts';
import { cornersOf, isRulerFriendly } from '../piecing/rulerSizes.ts';
import type { Recipe } from '../recipe/schema.ts';

/**
 * The grid a block is drawn on, as the trade sorts blocks: by the odd number that divides its side. 'rounds' grow about a
 * core instead; 'other' is any other grid; 'off-grid' has corners on no grid, as an eight-point star has.
 */
export type GridFamily = 'four-patch' | 'nine-patch' | 'five-patch' | 'seven-patch' | 'rounds' | 'other' | 'off-grid';

/** What a maker must be able to do; 'full-seams' stands alone and says that no seam is any of the first three. */
export type Skill = 'full-seams' | 'partial-seams' | 'set-in-seams' | 'curves' | 'bias-edges';

/** What a library finds recipes by, besides words: worked out from the construction, never typed. */
export interface RecipeFacets {
  readonly family: GridFamily;
  /** Equal parts of the longer side that every corner of a patch falls on; null off the grid. */
  readonly grid: number | null;
  readonly patches: number;
  /** Kinds of unit it holds, in the order they are met. */
  readonly units: readonly Unit['kind'][];
  /** The way each is made when nobody chooses. */
  readonly methods: readonly MethodId[];
  readonly skills: readonly Skill[];
  /** Of `FACET_SIZES`, the finished widths at which every unit falls on the marks of a ruler with eighths or millimetres. */
  readonly sizes: Readonly<Record<Units, readonly Inches[]>>;
}

/**
 * Finished block widths the library is asked for on each ruler: those patterns are most often sold in, and round centimetres
 * that many grids divide (common practice).
 */
export const FACET_SIZES: Readonly<Record<Units, readonly Inches[]>> = {
  inches: [4, 6, 7, 8, 9, 10, 12, 14, 15, 16],
  centimetres: [10, 12, 14, 15, 16, 18, 20, 21, 24, 25, 28, 30, 35, 36, 40].map((width) => width * CENTIMETRE),
};

/** Raised when facets are worked out differently. */
const VERSION = 2;

/**
 * A number for the rules facets are worked out by, so that those kept from before are worked out anew when they change: of
 * this file, and of the methods the house knows. Never 0.
 */
export function facetRules(): number {
  const text = [VERSION, ...METHODS.map(({ id }) => id)].join(' ');
  return [...text].reduce((sum, letter) => (sum * 31 + letter.charCodeAt(0)) % 1_000_003, 7) + 1;
}

/** The ruler a block is asked about in each unit. */
const MARK: Readonly<Record<Units, Inches>> = { inches: 1 / 8, centimetres: CENTIMETRE / 10 };

/**
 * The facets of a recipe as its parameters stand by default.
 * @param book every recipe it may hold
 * @returns null when it cannot be drawn and sewn; `lower` says why
 */
export function recipeFacets(recipe: Recipe, book: RecipeBook): RecipeFacets | null {
  const lowered = lower(recipe, {}, book, '');
  if (!lowered.ok) return null;
  const piecing = lowered.value;
  const grid = gridOf(piecing.drawing);
  const methods = piecing.units.flatMap((unit) => methodsFor(unit)[0]?.id ?? []);
  const onMarks = (units: Units) => FACET_SIZES[units].filter((width) => isRulerFriendly(piecing, width, MARK[units]));
  return {
    family: piecing.root.kind === 'rounds' ? 'rounds' : familyOf(equalParts(recipe) ?? grid),
    grid,
    patches: piecing.drawing.patches.length,
    units: [...new Set(piecing.units.map(({ kind }) => kind))],
    methods: [...new Set(methods)],
    skills: skillsOf(piecing),
    sizes: { inches: onMarks('inches'), centimetres: onMarks('centimetres') },
  };
}

/** The equal columns and rows of a block's own grid: a four-patch of nine-patches is a four-patch. Null where it has none. */
function equalParts({ body }: Recipe): number | null {
  if (body.kind !== 'grid') return null;
  const { columns, rows } = body;
  const equal = [...columns, ...rows].every((span) => span === columns[0]);
  return equal && columns.length === rows.length && columns.length > 1 ? columns.length : null;
}

function familyOf(grid: number | null): GridFamily {
  if (grid === null) return 'off-grid';
  let odd = grid;
  while (odd % 2 === 0) odd /= 2;
  return odd === 1 && grid > 1 ? 'four-patch' : (FAMILIES[odd] ?? 'other');
}

const FAMILIES: Readonly<Record<number, GridFamily>> = {
  3: 'nine-patch',
  9: 'nine-patch',
  5: 'five-patch',
  7: 'seven-patch',
};

function gridOf(drawing: Drawing): number | null {
  const corners = cornersOf(drawing);
  const lengths = [drawing.width, drawing.height, ...corners.flatMap(({ x, y }) => [x, y])];
  if (lengths.some((length) => Math.abs(length - Math.round(length)) > 1e-6)) return null;
  const common = lengths.reduce((a, b) => commonDivisor(a, Math.round(b)), 0);
  return Math.max(drawing.width, drawing.height) / common;
}

function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b);
}

/** What a maker of a block must be able to do. */
export function skillsOf({ root, units }: Pick<Piecing, 'root' | 'units'>): readonly Skill[] {
  const { partial, setIn, curved } = seamCensus(root, units);
  const hard: Skill[] = [];
  if (partial > 0) hard.push('partial-seams');
  if (setIn > 0) hard.push('set-in-seams');
  if (curved > 0) hard.push('curves');
  const straight: Skill[] = hard.length === 0 ? ['full-seams'] : hard;
  return units.some(hasBiasEdges) ? [...straight, 'bias-edges'] : straight;
}

/**
 * Whether a unit is sewn along cut edges that stretch and no quick method spares the maker them: triangles of half-square
 * and quarter-square kind are sewn before they are cut, those here are cut first (common practice).
 */
function hasBiasEdges(unit: Unit): boolean {
  if (unit.kind === 'half-rectangle') return true;
  return unit.kind === 'pieced' && edgesOf(unit.drawing).some(([a, b]) => isSlanted(unit.drawing, a, b));
}

function isSlanted(drawing: Drawing, a: number, b: number): boolean {
  const [from, to] = [drawing.points[a], drawing.points[b]];
  if (from === undefined || to === undefined || arcBetween(drawing, a, b) !== null) return false;
  return Math.abs(from.x - to.x) > 1e-6 && Math.abs(from.y - to.y) > 1e-6;
}
