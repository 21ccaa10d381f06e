import type { Unit } from './piecing.ts';

const NAMES: Readonly<Record<Unit['kind'], string>> = {
  plain: 'Plain',
  log: 'Log',
  hst: 'Half-square triangle',
  geese: 'Flying geese',
  'four-patch': 'Four-patch',
  corners: 'Stitch-and-flip corners',
  qst: 'Quarter-square triangle',
  'three-patch': 'Three-patch quarter-square triangle',
  'square-in-square': 'Square in a square',
  'half-rectangle': 'Half-rectangle triangle',
  'nine-patch': 'Nine-patch',
  checkerboard: 'Checkerboard',
  rails: 'Rails',
  'quarter-circle': 'Quarter circle',
  pieced: 'Pieced unit',
};

/** What the trade calls a kind of unit. */
export function unitKindName(kind: Unit['kind']): string {
  return NAMES[kind];
}

/** What the trade calls a unit: "Flying geese", "Plain square". */
export function unitName(unit: Unit): string {
  if (unit.kind !== 'plain') return NAMES[unit.kind];
  return unit.width === unit.height ? 'Plain square' : 'Plain rectangle';
}
