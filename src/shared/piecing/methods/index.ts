import type { Method, MethodId, NamedMethod } from '../method.ts';
import type { Unit } from '../piecing.ts';
import { fromPieces } from './boardPieces.ts';
import { checkerboardStrips } from './checkerboardStrips.ts';
import { cornersFlip } from './cornersFlip.ts';
import { foundation } from './foundation.ts';
import { fourPatchSquares } from './fourPatchSquares.ts';
import { fourPatchStrips } from './fourPatchStrips.ts';
import { geeseFlip } from './geeseFlip.ts';
import { geeseFour } from './geeseFour.ts';
import { geeseTriangles } from './geeseTriangles.ts';
import { halfRectangle } from './halfRectangle.ts';
import { hstEight } from './hstEight.ts';
import { hstFour } from './hstFour.ts';
import { hstOversize } from './hstOversize.ts';
import { hstTriangles } from './hstTriangles.ts';
import { hstTwo } from './hstTwo.ts';
import { logCut } from './logCut.ts';
import { ninePatchStrips } from './ninePatchStrips.ts';
import { plainCut } from './plainCut.ts';
import { qstHst } from './qstHst.ts';
import { qstTriangles } from './qstTriangles.ts';
import { quarterCircle } from './quarterCircle.ts';
import { railsStrips } from './railsStrips.ts';
import { seamBySeam } from './seamBySeam.ts';
import { squareInSquareFlip } from './squareInSquareFlip.ts';
import { squareInSquareTriangles } from './squareInSquareTriangles.ts';
import { templateCut } from './template.ts';
import { threePatchTriangles } from './threePatchTriangles.ts';

/** Every method the house knows. Of two that make the same unit, the one to prefer stands first. */
export const METHODS: readonly Method[] = [
  plainCut,
  logCut,
  hstTwo,
  hstEight,
  hstOversize,
  hstFour,
  hstTriangles,
  geeseFour,
  geeseFlip,
  geeseTriangles,
  qstHst,
  qstTriangles,
  threePatchTriangles,
  squareInSquareTriangles,
  squareInSquareFlip,
  halfRectangle,
  cornersFlip,
  fourPatchStrips,
  fourPatchSquares,
  ninePatchStrips,
  fromPieces('nine-patch', 'nine-patch-squares'),
  checkerboardStrips,
  fromPieces('checkerboard', 'checkerboard-squares'),
  railsStrips,
  fromPieces('rails', 'rails-pieces'),
  quarterCircle,
  seamBySeam,
  templateCut,
  foundation,
];

/** The methods that make a unit, the best first; empty when no method does. The unit's own wish is left to the caller. */
export function methodsFor(unit: Unit): readonly Method[] {
  return METHODS.filter((method) => method.makes(unit));
}

/** The method with this id, or null when there is none. */
export function methodNamed(id: MethodId): Method | null {
  return METHODS.find((method) => method.id === id) ?? null;
}

/** The method's name without the method. */
export function nameOf({ id, name, source }: Method): NamedMethod {
  return { id, name, source };
}
