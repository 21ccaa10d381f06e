import { INCH_RULER, type Ruler } from '../../measure/ruler.ts';
import type { Bundle } from '../../pattern/schema.ts';
import { allot } from './allot.ts';
import type { Allotment } from './allotment.ts';
import { instructionsOf, type StripInstruction } from './instructions.ts';
import { bundlesNeeded, type Fewest, fewestStrips } from './recast.ts';
import { isEnough, supplyOf } from './stress.ts';
import type { Wants } from './wants.ts';

/** What a bundle comes to in one size. */
export interface BundleAnswer {
  readonly bundle: Bundle;
  readonly wants: Wants;
  /** Whether one bundle is enough. */
  readonly oneIsEnough: boolean;
  /** Bundles like this one that are enough; null when no number is. */
  readonly bundles: number | null;
  /** So many bundles, or one where no number is enough, strip by strip. */
  readonly allotment: Allotment;
  readonly instructions: readonly StripInstruction[];
  /** Where one is not enough, the fewest strips of each value that would do; null when no number would. */
  readonly fewest: Fewest | null;
}

/** Is one bundle enough, how is it cut, and if it is not, what would do? */
export function bundleAnswer(wants: Wants, bundle: Bundle, ruler: Ruler = INCH_RULER): BundleAnswer {
  const supply = supplyOf(bundle);
  const one = allot(wants, supply);
  const oneIsEnough = isEnough(one);
  const bundles = oneIsEnough ? 1 : bundlesNeeded(wants, supply);
  const allotment = bundles === null || bundles === 1 ? one : allot(wants, times(supply, bundles));
  const fewest = oneIsEnough ? null : fewestStrips(wants, bundle.length, supply.square);
  return { bundle, wants, oneIsEnough, bundles, allotment, instructions: instructionsOf(allotment, ruler), fewest };
}

function times(supply: ReturnType<typeof supplyOf>, many: number): ReturnType<typeof supplyOf> {
  const { light, medium, dark } = supply.values;
  return { ...supply, values: { light: light * many, medium: medium * many, dark: dark * many } };
}
