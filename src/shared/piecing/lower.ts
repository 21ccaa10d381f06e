import { buildDrawing } from '../drawing/build.ts';
import { checkDrawing } from '../drawing/check.ts';
import { accept, type Finding, type Maybe } from '../measure/finding.ts';
import type { Recipe } from '../recipe/schema.ts';
import { distinct } from './distinct.ts';
import { seamFindings } from './find/findings.ts';
import { lowerDrawing } from './lowerDrawing.ts';
import { lowerGrid } from './lowerGrid.ts';
import { type Lowering, numbersFor, type RecipeBook } from './lowering.ts';
import { lowerRounds } from './lowerRounds.ts';
import type { Piecing, Unit } from './piecing.ts';
import { snap, snapShape } from './shape.ts';
import { type LooseLeaf, placeSub, type Sub } from './sub.ts';
import { leavesOf, mapTree } from './tree.ts';
import { withInside } from './unitsInside.ts';

/** A block may have this many patches, and its grid this many units across: beyond it a block is no longer sewn. */
const MOST_PATCHES = 1500;
const MOST_UNITS = 720;

/**
 * A recipe as a drawing and a piecing, in whole grid units.
 * @param recipe what is lowered
 * @param parameters values for its parameters; those left out take their defaults
 * @param book every recipe it may hold
 * @param path where the recipe stands in the document, for the findings
 * @returns the piecing, or everything that is wrong with the recipe, each with its place
 */
export function lower(
  recipe: Recipe,
  parameters: Readonly<Record<string, number>>,
  book: RecipeBook,
  path: string,
): Maybe<Piecing> {
  const findings: Finding[] = [];
  const complaint = (what: string, where: string) =>
    findings.push({ level: 'stops', what, where: { path: joined(path, where) } });
  const numbers = numbersFor(recipe, parameters, complaint);
  const roles = Object.fromEntries(recipe.roles.map(({ id }) => [id, id]));
  const notes: Finding[] = [];
  const sub =
    findings.length > 0
      ? null
      : lowerBody({ book, recipe, numbers, roles, within: [recipe.id], path, findings, notes, lowerBody });
  if (sub === null || findings.length > 0) return { ok: false, findings };
  return settle(sub, joined(path, 'body'), notes);
}

/** The one place that knows which kinds of body there are. */
function lowerBody(on: Lowering): Sub | null {
  const { body } = on.recipe;
  if (body.kind === 'drawing') return lowerDrawing(on, body);
  return body.kind === 'grid' ? lowerGrid(on, body) : lowerRounds(on, body);
}

function joined(path: string, where: string): string {
  return path === '' ? where : `${path}.${where}`;
}

function settle(sub: Sub, path: string, notes: readonly Finding[]): Maybe<Piecing> {
  if (sub.polygons.length > MOST_PATCHES)
    return tooMuch(`The block has ${sub.polygons.length} patches; the most is ${MOST_PATCHES}.`, path);
  const whole = placeSub(sub, wholeFactor(sub), 0, 0);
  const polygons = whole.polygons.map(({ corners, role }) => ({
    role,
    corners: corners.map((corner) => ({ ...corner, x: snap(corner.x), y: snap(corner.y) })),
  }));
  const drawing = buildDrawing(snap(whole.width), snap(whole.height), polygons);
  const wrong = checkDrawing(drawing, path);
  if (wrong.length > 0) return { ok: false, findings: wrong };
  return accept({ ...pieced(whole, drawing), findings: [...notes, ...seamFindings(whole.root, path)] });
}

function tooMuch(what: string, path: string): Maybe<Piecing> {
  return { ok: false, findings: [{ level: 'stops', what, where: { path }, mend: 'Use fewer, larger units.' }] };
}

function pieced(sub: Sub, drawing: Piecing['drawing']): Omit<Piecing, 'findings'> {
  const units = new Map<string, Unit>();
  for (const loose of leavesOf(sub.root)) {
    const { unit } = distinct(snapped(loose));
    if (!units.has(unit.key)) units.set(unit.key, unit);
  }
  const root = mapTree(sub.root, (loose) => distinct(snapped(loose)).leaf, snappedBox);
  return { drawing, root, units: withInside(units.values()) };
}

/** What scaling left a hair off the grid, brought to it. */
function snapped(leaf: LooseLeaf): LooseLeaf {
  return { ...leaf, shape: snapShape(leaf.shape), box: snappedBox(leaf.box) };
}

function snappedBox({ x, y, width, height }: LooseLeaf['box']): LooseLeaf['box'] {
  return { x: snap(x), y: snap(y), width: snap(width), height: snap(height) };
}

/**
 * The smallest whole number that, times every coordinate, gives whole grid units. Coordinates that no grid of a size still
 * sewn makes whole, such as the corners of an eight-point star, are left out: they stay between the grid's lines.
 */
function wholeFactor(sub: Sub): number {
  const lengths = new Set(sub.polygons.flatMap(({ corners }) => corners.flatMap(({ x, y }) => [x, y])));
  const most = MOST_UNITS / Math.max(sub.width, sub.height);
  let factor = 1;
  for (const length of [sub.width, sub.height, ...lengths]) {
    for (let more = 1; factor * more <= most; more += 1) {
      if (!isWhole(length * factor * more)) continue;
      factor *= more;
      break;
    }
  }
  return factor;
}

function isWhole(value: number): boolean {
  return Math.abs(value - Math.round(value)) < 1e-7;
}
