import type { Finding } from '../measure/finding.ts';
import { type Inches, longer, same } from '../measure/inches.ts';
import { type EdgeSeam, edgeSeams } from '../piecing/edgeSeams.ts';
import type { Piecing, Unit, UnitLeaf } from '../piecing/piecing.ts';
import { unitCalled } from '../piecing/unitNames.ts';
import type { SizedUnit } from '../quilt/sized.ts';
import { levelOf } from './level.ts';
import { NO_STOPS, plainSewn, type Sewn, type Stop, turnSewn } from './sewn.ts';
import { type Misfit, type SewnUp, sewUp } from './sewUp.ts';

/** What a block is known by in a finding. */
export interface Named {
  readonly letter: string;
  /** The size's name. */
  readonly size: string;
  readonly path: string;
  /** How lengths are said. */
  readonly say: (length: Inches) => string;
}

/** A block sewn on paper at one size. */
export interface FittedBlock {
  readonly up: SewnUp;
  readonly findings: readonly Finding[];
}

/**
 * Sews a block from its units as printed, and says where it does not come out as drawn.
 * @param grid finished inches of one grid unit
 * @param seam inches
 */
export function fitBlock(
  piecing: Piecing,
  units: readonly SizedUnit[],
  grid: Inches,
  seam: Inches,
  named: Named,
): FittedBlock {
  const up = sewUp(piecing.root, measureUnits(units, grid, seam));
  const findings = [
    ...vanishing(units, seam, named),
    ...misfitFindings(up.misfits, named),
    ...insideFindings(units, grid, seam, named),
    ...driftFindings(up.sewn, named),
  ];
  return { up, findings };
}

/** Units that the ruler leaves nothing of: all seam allowance, and no finished cloth. */
function vanishing(units: readonly SizedUnit[], seam: Inches, { letter, size, path }: Named): readonly Finding[] {
  const gone = units.some(({ plan: { unfinished } }) =>
    [unfinished.width, unfinished.height].some(({ value }) => !longer(value, 2 * seam)),
  );
  if (!gone) return [];
  const what = `Block ${letter} is so small in ${size} that some of its pieces would finish at nothing.`;
  return [{ level: 'stops', what, where: { path, size, on: letter }, mend: 'Make the block larger.' }];
}

/** Units of the trade inside a pieced one that the ruler makes larger or smaller than the place they are sewn into. */
function insideFindings(
  units: readonly SizedUnit[],
  grid: Inches,
  seam: Inches,
  { letter, size, path, say }: Named,
): readonly Finding[] {
  const inside = new Set(units.flatMap(({ plan }) => (plan.takes ?? []).map(({ unit }) => unit.key)));
  return units.flatMap(({ unit, plan: { unfinished } }): readonly Finding[] => {
    if (!inside.has(unit.key)) return [];
    const off = [
      unfinished.width.value - 2 * seam - unit.width * grid,
      unfinished.height.value - 2 * seam - unit.height * grid,
    ];
    const [by] = off.sort((a, b) => Math.abs(b) - Math.abs(a)) as [number];
    if (Math.abs(by) <= EASED) return [];
    const what =
      `Inside block ${letter} the ${unitCalled(unit.kind)} finishes ${say(Math.abs(by))} ` +
      `${by < 0 ? 'smaller' : 'larger'} than its place in ${size}.`;
    return [{ level: levelOf(by), what, where: { path, size, on: letter }, by, mend: MEND }];
  });
}

/** A unit that lies at a slant never falls on the ruler’s marks: so much is eased in as it is sewn (common practice). */
const EASED: Inches = 1 / 32;

function measureUnits(units: readonly SizedUnit[], grid: Inches, seam: Inches): (leaf: UnitLeaf) => Sewn {
  const known = new Map(
    units.map(({ unit, plan }) => {
      const { width, height } = plan.unfinished;
      const design = { width: unit.width * grid, height: unit.height * grid };
      const sewn = { width: width.value - 2 * seam, height: height.value - 2 * seam };
      return [unit.key, plainSewn(sewn.width, sewn.height, design, stopsOf(unit, sewn, design))] as const;
    }),
  );
  return (leaf) => {
    const sewn = known.get(leaf.unit);
    if (sewn === undefined) throw new RangeError(`No unit “${leaf.unit}” at this size`);
    return turnSewn(sewn, leaf.turn);
  };
}

/** Seams that end inside an edge. What runs into a corner is left out: there the seam allowance is. */
function stopsOf(unit: Unit, sewn: Sewn['design'], design: Sewn['design']): Sewn['edges'] {
  const { columns, rows } = boardOf(unit);
  if (columns * rows === 1) return slantedStops(unit, sewn, design);
  const across = evenly(columns, sewn.width, design.width);
  const down = evenly(rows, sewn.height, design.height);
  return { top: across, bottom: across, left: down, right: down };
}

/** Where slanting and curved seams end inside an edge: in the same share of it as drawn. */
function slantedStops(unit: Unit, sewn: Sewn['design'], design: Sewn['design']): Sewn['edges'] {
  if (unit.kind === 'plain' || unit.kind === 'log') return NO_STOPS;
  const stops = (seams: readonly EdgeSeam[], length: 'width' | 'height') =>
    seams.map(
      ({ at }): Stop => ({ design: (design[length] * at) / unit[length], sewn: (sewn[length] * at) / unit[length] }),
    );
  const { top, right, bottom, left } = edgeSeams(unit);
  return {
    top: stops(top, 'width'),
    right: stops(right, 'height'),
    bottom: stops(bottom, 'width'),
    left: stops(left, 'height'),
  };
}

/** Equal parts of a unit across and down. */
function boardOf(unit: Unit): { readonly columns: number; readonly rows: number } {
  switch (unit.kind) {
    case 'four-patch':
      return { columns: 2, rows: 2 };
    case 'nine-patch':
      return { columns: 3, rows: 3 };
    case 'checkerboard':
      return unit;
    case 'rails':
      return { columns: 1, rows: unit.roles.length };
    default:
      return { columns: 1, rows: 1 };
  }
}

function evenly(parts: number, sewn: Inches, design: Inches): readonly Stop[] {
  return Array.from({ length: parts - 1 }, (_, i) => ({
    design: (design * (i + 1)) / parts,
    sewn: (sewn * (i + 1)) / parts,
  }));
}

function misfitFindings(misfits: readonly Misfit[], { letter, size, path, say }: Named): readonly Finding[] {
  const [worst] = [...misfits].sort((a, b) => Math.abs(b.by) - Math.abs(a.by));
  if (worst === undefined) return [];
  const amount = say(Math.abs(worst.by));
  const others = misfits.length > 1 ? ` Of its seams, ${misfits.length} do not agree.` : '';
  const what =
    worst.kind === 'length'
      ? `In block ${letter} a part is ${amount} too ${worst.by > 0 ? 'short' : 'long'} for the part it is sewn to in ${size}.${others}`
      : `In block ${letter} two seams miss each other by ${amount} in ${size}.${others}`;
  return [
    { level: levelOf(worst.by), what, where: { path, size, on: letter, box: worst.box }, by: worst.by, mend: MEND },
  ];
}

const MEND = 'Choose a block size whose units fall on the ruler’s marks.';

function driftFindings(sewn: Sewn, { letter, size, path, say }: Named): readonly Finding[] {
  const width = sewn.width - sewn.design.width;
  const height = sewn.height - sewn.design.height;
  if (same(width, 0) && same(height, 0)) return [];
  const by = Math.abs(width) >= Math.abs(height) ? width : height;
  const what =
    `Cut on the ruler’s marks, block ${letter} comes out ${say(Math.abs(by))} ` +
    `${by < 0 ? 'smaller' : 'larger'} than ${say(sewn.design.width)} in ${size}.`;
  return [{ level: levelOf(by), what, where: { path, size, on: letter }, by, mend: MEND }];
}
