import type { Method, MethodId } from '../method.ts';
import type { Unit } from '../piecing.ts';
import { cornersFlip } from './cornersFlip.ts';
import { fourPatchSquares } from './fourPatchSquares.ts';
import { fourPatchStrips } from './fourPatchStrips.ts';
import { geeseFlip } from './geeseFlip.ts';
import { geeseFour } from './geeseFour.ts';
import { hstEight } from './hstEight.ts';
import { hstTwo } from './hstTwo.ts';
import { logCut } from './logCut.ts';
import { plainCut } from './plainCut.ts';
import { templateCut } from './template.ts';

/** Every method the house knows. Of two that make the same unit, the one to prefer stands first. */
export const METHODS: readonly Method[] = [
  plainCut,
  logCut,
  hstTwo,
  hstEight,
  geeseFour,
  geeseFlip,
  cornersFlip,
  fourPatchStrips,
  fourPatchSquares,
  templateCut,
];

/** The methods that make a unit, the best first; empty when no method does. The unit's own wish is left to the caller. */
export function methodsFor(unit: Unit): readonly Method[] {
  return METHODS.filter((method) => method.makes(unit));
}

/** The method with this id, or null when there is none. */
export function methodNamed(id: MethodId): Method | null {
  return METHODS.find((method) => method.id === id) ?? null;
}
