import { flatCorners } from '../drawing/curve.ts';
import { type Turn, turnPoint, turnSize, UNTURNED } from '../drawing/turn.ts';
import type { Inches } from '../measure/inches.ts';
import type { Unit } from '../piecing/piecing.ts';
import { unitPolygons } from '../piecing/unitShape.ts';
import type { Area, Figure, Mark } from './figure.ts';
import { boxLine, type FabricOf, framed, heartOf, letter } from './marks.ts';
import { measuredLine } from './measured.ts';

export interface UnitFigureOptions {
  /** How the unit lies; left out, as the trade draws it. */
  readonly turn?: Turn;
  /** One letter in the middle of the unit, or one for each of its patches in the order of `unitPolygons`. */
  readonly letters?: string | readonly string[];
  /** What it measures, said below and beside it. */
  readonly measures?: { readonly width: string; readonly height: string };
}

/** The names of units in a sentence. */
const UNIT_NAMES: Readonly<Record<Unit['kind'], string>> = {
  plain: 'A plain piece',
  log: 'A log',
  hst: 'A half-square triangle unit',
  geese: 'A flying geese unit',
  'four-patch': 'A four-patch unit',
  corners: 'A unit with stitch-and-flip corners',
  qst: 'A quarter-square triangle unit',
  'three-patch': 'A three-patch quarter-square triangle unit',
  'square-in-square': 'A square in a square',
  'half-rectangle': 'A half-rectangle triangle unit',
  'nine-patch': 'A nine-patch unit',
  checkerboard: 'A checkerboard unit',
  rails: 'A unit of strips',
  'quarter-circle': 'A quarter-circle unit',
  pieced: 'A pieced unit',
};

/**
 * The finished unit as patches.
 * @param grid finished inches of one grid unit
 */
export function unitFigure(unit: Unit, grid: Inches, fabricOf: FabricOf, options: UnitFigureOptions = {}): Figure {
  const turn = options.turn ?? UNTURNED;
  const [w, h] = [unit.width * grid, unit.height * grid];
  const outlines = unitPolygons(unit).map(({ corners, role }) => ({
    role,
    corners: flatCorners(corners).map(({ x, y }) => turnPoint({ x: x * grid, y: y * grid }, turn, w, h)),
  }));
  const areas = outlines.map(({ corners, role }): Area => {
    return {
      kind: 'area',
      outlines: [corners],
      fabric: fabricOf[role] ?? null,
      tone: 'full',
      edge: 'patch',
      of: `unit ${unit.key}`,
    };
  });
  const { width, height } = turnSize(w, h, turn);
  const letters = lettersOf(
    options.letters,
    outlines.map(({ corners }) => corners),
    { x: width / 2, y: height / 2 },
  );
  const marks: Mark[] = [...areas, boxLine({ x: 0, y: 0, width, height }, 'unit'), ...letters];
  const alt = `${UNIT_NAMES[unit.kind]}.`;
  if (options.measures === undefined) return { width, height, marks, alt };
  return withMeasures(marks, width, height, options.measures, alt);
}

type Letters = UnitFigureOptions['letters'];

function lettersOf(letters: Letters, outlines: Area['outlines'], middle: { x: number; y: number }): readonly Mark[] {
  if (letters === undefined) return [];
  if (typeof letters === 'string') return [letter(letters, middle)];
  return letters.slice(0, outlines.length).map((text, i) => letter(text, heartOf(outlines[i] ?? [])));
}

function withMeasures(
  marks: readonly Mark[],
  w: number,
  h: number,
  words: { width: string; height: string },
  alt: string,
): Figure {
  const out = Math.max(w, h) * 0.16;
  const below = measuredLine({ x: 0, y: h + out }, { x: w, y: h + out }, words.width, out * 0.5);
  const beside = measuredLine({ x: -out, y: 0 }, { x: -out, y: h }, words.height, out * 0.5);
  return framed([...marks, ...below, ...beside], `${alt} It measures ${words.width} by ${words.height}.`, {
    left: out * 0.3,
    bottom: out * 0.3,
  });
}
