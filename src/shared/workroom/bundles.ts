import { type BundleAnswer, bundleAnswer } from '../cloth/bundle/bundleFor.ts';
import type { Wants } from '../cloth/bundle/wants.ts';
import { wantsOf } from '../cloth/bundle/wantsOf.ts';
import { assignLetters } from '../cloth/letters.ts';
import type { Bundle } from '../pattern/schema.ts';
import type { WorkedOut, WorkedSize } from './workedOut.ts';

/**
 * What one size wants of a bundle of strips.
 * @param bundle left out, the pattern's own
 * @returns null when there is no bundle
 */
export function wantsIn(worked: WorkedOut, size: WorkedSize, bundle = worked.pattern.bundle): Wants | null {
  if (bundle === undefined) return null;
  const { pattern } = worked;
  const fabricOf = Object.fromEntries(worked.blocks.map((block) => [block.id, block.fabricOf]));
  const piecings = new Map(worked.blocks.map((block) => [block.id, block.piecing]));
  const letters = assignLetters(pattern, worked.sizes, fabricOf);
  const { quilt, blocks, cloth } = size;
  return wantsOf({ pattern, bundle, quilt, blocks, piecings, fabricOf, letters, cloth });
}

/** Is one bundle enough for this size? Null when the pattern has no bundle and none is given. */
export function bundleIn(worked: WorkedOut, size: WorkedSize, bundle?: Bundle): BundleAnswer | null {
  const asked = bundle ?? worked.pattern.bundle;
  const wants = wantsIn(worked, size, asked);
  return asked === undefined || wants === null ? null : bundleAnswer(wants, asked);
}
