import type { Bundle } from '../../pattern/schema.ts';
import { type Allotment, allot } from './allot.ts';
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
  /** One bundle, strip by strip; as far as it goes when it is not enough. */
  readonly allotment: Allotment;
  readonly instructions: readonly StripInstruction[];
  /** The fewest strips of each value that would do; null when no number would. */
  readonly fewest: Fewest | null;
}

/** Is one bundle enough, how is it cut, and if it is not, what would do? */
export function bundleAnswer(wants: Wants, bundle: Bundle): BundleAnswer {
  const supply = supplyOf(bundle);
  const allotment = allot(wants, supply);
  const oneIsEnough = isEnough(allotment);
  return {
    bundle,
    wants,
    oneIsEnough,
    bundles: oneIsEnough ? 1 : bundlesNeeded(wants, supply),
    allotment,
    instructions: instructionsOf(allotment),
    fewest: fewestStrips(wants, bundle.length),
  };
}
