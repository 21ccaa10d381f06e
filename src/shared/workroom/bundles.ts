import { type BundleAnswer, bundleAnswer } from '../cloth/bundle/bundleFor.ts';
import { brokenWords } from '../cloth/bundle/stress.ts';
import type { Wants } from '../cloth/bundle/wants.ts';
import { wantsOf } from '../cloth/bundle/wantsOf.ts';
import type { Finding } from '../measure/finding.ts';
import { type Ruler, rulerOn } from '../measure/ruler.ts';
import type { Step, Steps } from '../measure/steps.ts';
import type { Bundle, Pattern } from '../pattern/schema.ts';
import { lettersIn } from './lettersIn.ts';
import type { WorkedOut, WorkedSize } from './workedOut.ts';

/** What has to be worked out before a bundle can be asked about. */
export type BeforeBundles = Pick<WorkedOut, 'pattern' | 'blocks' | 'sizes'>;

/**
 * What one size wants of a bundle of strips.
 * @param bundle left out, the pattern's own
 * @returns null when there is no bundle
 */
export function wantsIn(worked: BeforeBundles, size: WorkedSize, bundle = worked.pattern.bundle): Wants | null {
  if (bundle === undefined) return null;
  const { pattern } = worked;
  const fabricOf = Object.fromEntries(worked.blocks.map((block) => [block.id, block.fabricOf]));
  const piecings = new Map(worked.blocks.map((block) => [block.id, block.piecing]));
  const letters = lettersIn(worked);
  const { quilt, blocks, cloth } = size;
  return wantsOf({ pattern, bundle, quilt, blocks, piecings, fabricOf, letters, cloth });
}

/** Is one bundle enough for this size? Null when the pattern has no bundle and none is given. */
function bundleIn(worked: BeforeBundles, size: WorkedSize, bundle?: Bundle): BundleAnswer | null {
  const asked = bundle ?? worked.pattern.bundle;
  const wants = wantsIn(worked, size, asked);
  return asked === undefined || wants === null ? null : bundleAnswer(wants, asked, rulerOn(worked.pattern.house.step));
}

/** The sizes with what the pattern's bundle comes to in each, and what is wrong with it. */
export function* withBundlesInSteps(
  worked: BeforeBundles,
  step: (size: WorkedSize) => Step,
): Steps<readonly WorkedSize[]> {
  const sizes: WorkedSize[] = [];
  for (const size of worked.sizes) {
    yield step(size);
    sizes.push(withBundle(size, bundleIn(worked, size), rulerOn(worked.pattern.house.step)));
  }
  return sizes;
}

function withBundle(size: WorkedSize, bundle: BundleAnswer | null, ruler: Ruler): WorkedSize {
  if (bundle === null) return size;
  const where = { path: 'bundle.values', size: size.size.name };
  const own = enoughFindings(bundle, size.size.name, ruler).map((finding) => ({ ...finding, where }));
  return { ...size, bundle, findings: [...size.findings, ...own] };
}

type Said = Pick<Finding, 'level' | 'what' | 'mend'>;

/** A bundle that is not enough: by how much, and what would do. */
function enoughFindings(
  { oneIsEnough, bundles, allotment, fewest }: BundleAnswer,
  size: string,
  ruler: Ruler,
): readonly Said[] {
  if (oneIsEnough) return [];
  if (bundles === null) {
    const [short] = allotment.short;
    const why = short === undefined ? 'a fabric meets itself in a block' : brokenWords(short, ruler);
    const what = `No number of these bundles is enough for ${size}: ${why}.`;
    return [{ level: 'stops', what, mend: 'Let fewer fabrics match, or say that the strips are longer.' }];
  }
  const least = fewest === null ? '' : ` The fewest strips that would do: ${fewestWords(fewest)}.`;
  return [{ level: 'note', what: `One bundle is not enough for ${size}: it takes ${bundles}.${least}` }];
}

function fewestWords(fewest: NonNullable<BundleAnswer['fewest']>): string {
  const said = (['light', 'medium', 'dark'] as const).filter((value) => fewest[value] > 0);
  return said.map((value) => `${fewest[value]} ${value}`).join(', ');
}

/** Fabrics that a bundle speaks of and the pattern does not have. */
export function bundleFabrics({ bundle, fabrics }: Pattern): readonly Finding[] {
  if (bundle === undefined) return [];
  const known = new Set(fabrics.map(({ id }) => id));
  return (['fabrics', 'match'] as const).flatMap((list) =>
    (bundle[list] ?? []).flatMap((id, i): Finding[] => {
      if (known.has(id)) return [];
      const what = `The bundle speaks of the fabric “${id}”, which the pattern does not have.`;
      return [{ level: 'stops', what, where: { path: `bundle.${list}[${i}]` }, mend: 'Choose one of its fabrics.' }];
    }),
  );
}
