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

/** What one or several units of a kind are called in a sentence: "square in a square", "squares in a square". */
export function unitCalled(kind: Unit['kind'], many = 1): string {
  const name = NAMES[kind].toLowerCase();
  if (many === 1 || name === 'flying geese' || name === 'rails') return name;
  if (kind === 'square-in-square') return 'squares in a square';
  return kind === 'four-patch' || kind === 'nine-patch' ? `${name}es` : `${name}s`;
}

/** What the trade calls a unit: "Flying geese", "Plain square". */
export function unitName(unit: Unit): string {
  if (unit.kind !== 'plain') return NAMES[unit.kind];
  return unit.width === unit.height ? 'Plain square' : 'Plain rectangle';
}
