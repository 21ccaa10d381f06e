import type { Drawing } from '../../drawing/drawing.ts';
import { type Turn, turnPoint, undoTurn } from '../../drawing/turn.ts';
import { turnDrawing } from '../../drawing/whole.ts';
import type { Finding } from '../../measure/finding.ts';
import { type SeamCensus, seamCensus } from '../census.ts';
import { distinct } from '../distinct.ts';
import type { BlockPart, Part, Unit } from '../piecing.ts';
import { type LooseLeaf, turnSub } from '../sub.ts';
import { leavesOf, mapTree } from '../tree.ts';
import { withInside } from '../unitsInside.ts';
import { total } from './cost.ts';
import { type Field, fieldOf } from './field.ts';
import { seamFindings, unkeptFinding } from './findings.ts';
import { formsOf } from './form.ts';
import { layOut } from './lay.ts';
import { isKept } from './pinned.ts';
import { type Pin, pinsOf } from './pins.ts';
import type { Plan } from './plan.ts';
import { Search } from './search.ts';

export interface PieceOptions {
  /** What the designer fixes of the sewing. */
  readonly pins?: readonly Pin[];
  /** Where the drawing stands in its document, for the findings. */
  readonly path?: string;
}

/** How a drawing is sewn. */
export interface Pieced {
  readonly root: BlockPart;
  /** The distinct units, in the order they are first met in sewing order. */
  readonly units: readonly Unit[];
  readonly census: SeamCensus;
  /** What is hard about it, and pins that could not be kept. */
  readonly findings: readonly Finding[];
}

/**
 * Finds how a drawing is sewn: straight seams from edge to edge wherever they will do, partial seams about a core where they
 * will not, and set-in and curved seams only where nothing else does. The same drawing always gives the same plan; turned or
 * mirrored, it gives the plan turned or mirrored.
 * @param drawing a sound drawing, as `checkDrawing` says, in grid units
 */
export function pieceDrawing(drawing: Drawing, options: PieceOptions = {}): Pieced {
  const { root, findings } = findSewing(drawing, options);
  return { ...named(root), findings: [...findings, ...seamFindings(root, options.path ?? 'body')] };
}

/**
 * The same, before its units are named: for a drawing that is to become part of a larger block. The findings are of pins alone.
 */
export function findSewing(
  drawing: Drawing,
  { pins = [], path = 'body' }: PieceOptions,
): { readonly root: Part<LooseLeaf>; readonly findings: readonly Finding[] } {
  const turn = commonTurn(drawing);
  const turned = turnDrawing(drawing, turn);
  const point = (place: { readonly x: number; readonly y: number }) =>
    turnPoint(place, turn, drawing.width, drawing.height);
  const moved = pins.map((pin): Pin => {
    const { first, unit } = pin;
    return {
      ...pin,
      ...(first === undefined ? {} : { first: [point(first[0]), point(first[1])] }),
      ...(unit === undefined ? {} : { unit: [point(unit[0]), point(unit[1])] }),
    };
  });
  const { root, lost } = withPins(fieldOf(turned), moved, turn);
  const back = turnSub({ width: turned.width, height: turned.height, polygons: [], root }, undoTurn(turn)).root;
  const unkept = pins.flatMap((pin, i) => (lost.has(i) ? [unkeptFinding(pin, `${path}.pins[${i}]`)] : []));
  return { root: back, findings: unkept };
}

/** The turn to the one way in which the drawing lies in common with itself turned and mirrored. */
function commonTurn(drawing: Drawing): Turn {
  const field = fieldOf(drawing);
  return formsOf(field).of(field.whole, field.inside(field.whole)).turn;
}

/** The plan with as many pins as can be kept: those that a plan does not keep are left out, and it is made anew. */
function withPins(
  field: Field,
  pins: readonly Pin[],
  turn: Turn,
): { readonly root: Part<LooseLeaf>; readonly lost: ReadonlySet<number> } {
  const lost = new Set<number>();
  for (;;) {
    const root = planned(
      field,
      pins.filter((_, i) => !lost.has(i)),
      turn,
    );
    const broken = root === null ? pins.length - 1 : pins.findIndex((pin, i) => !lost.has(i) && !isKept(root, pin));
    if (root !== null && broken < 0) return { root, lost };
    lost.add(lost.has(broken) ? pins.findIndex((_, i) => !lost.has(i)) : broken);
  }
}

function planned(field: Field, pins: readonly Pin[], turn: Turn): Part<LooseLeaf> | null {
  const search = new Search(field, pinsOf(field, pins));
  const plan = search.best(field.whole);
  if (plan === null) return null;
  const root = layOut(search, field.whole, plan);
  const rows = rowsInstead(search, plan, turn);
  if (rows === null) return root;
  const other = layOut(search, field.whole, rows);
  return isSameWork(root, other) ? other : root;
}

/** Of a block that can be sewn in rows or in columns for the same price, the plan in rows; null when there is no choice. */
function rowsInstead(search: Search, plan: Plan, { quarters }: Turn): Plan | null {
  const { across, down } = search.plans(search.field.whole);
  const rows = quarters % 2 === 0 ? down : across;
  const alike = rows !== null && rows !== plan && Math.abs(total(rows.cost) - total(plan.cost)) < 1e-9;
  return alike && (plan === across || plan === down) ? rows : null;
}

/** Whether two plans take the same units and the same seams. */
function isSameWork(a: Part<LooseLeaf>, b: Part<LooseLeaf>): boolean {
  const work = (root: Part<LooseLeaf>) => {
    const keys = leavesOf<LooseLeaf>(root).map((leaf) => distinct(leaf).unit.key);
    return [...keys.sort(), JSON.stringify(named(root).census)].join('\n');
  };
  return work(a) === work(b);
}

/** The tree with its units named. */
function named(root: Part<LooseLeaf>): Pick<Pieced, 'root' | 'units' | 'census'> {
  const units = new Map<string, Unit>();
  const tree = mapTree(
    root,
    (loose: LooseLeaf) => {
      const { unit, leaf } = distinct(loose);
      if (!units.has(unit.key)) units.set(unit.key, unit);
      return leaf;
    },
    (box) => box,
  );
  const all = withInside(units.values());
  return { root: tree, units: all, census: seamCensus(tree, all) };
}
