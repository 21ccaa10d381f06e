import { VALUES } from '../../../shared/cloth/bundle/allotment.ts';
import type { BundleAnswer } from '../../../shared/cloth/bundle/bundleFor.ts';
import type { Fewest } from '../../../shared/cloth/bundle/recast.ts';
import type { OneOf } from '../../../shared/cloth/bundle/squares.ts';
import type { Trial } from '../../../shared/cloth/bundle/stress.ts';
import type { Ruler } from '../../../shared/measure/ruler.ts';
import type { Value } from '../../../shared/recipe/schema.ts';
import type { Recast } from '../../../shared/workroom/recasts.ts';

/** "One bundle is enough for Lap." */
export function answerWords({ oneIsEnough, bundles }: BundleAnswer, size: string): string {
  if (oneIsEnough) return `One bundle is enough for ${size}.`;
  if (bundles === null) return `No number of these bundles is enough for ${size}.`;
  return `One bundle is not enough for ${size}: it takes ${bundles}.`;
}

/** "20 light strips". */
export function stripsText(many: number, value: Value, one: OneOf): string {
  return many === 1 ? `1 ${value} ${one}` : `${many} ${value} ${one}s`;
}

/** "15 light and 18 dark". */
export function fewestText(fewest: Fewest): string {
  const said = VALUES.filter((value) => fewest[value] > 0).map((value) => `${fewest[value]} ${value}`);
  return said.length < 2 ? said.join('') : `${said.slice(0, -1).join(', ')} and ${said.at(-1)}`;
}

/** What goes wrong in a trial. */
export function trialName({ what, value }: Trial, one: OneOf): string {
  switch (what) {
    case 'fewer':
      return `Fewer ${value} ${one}s`;
    case 'shorter':
      return one === 'square' ? 'Smaller squares' : 'Shorter strips';
    case 'pinked':
      return 'Pinked edges trimmed off';
    case 'duplicates':
      return `${value === undefined ? '' : capital(value)} fabrics that come twice`;
    case 'split':
      return `${capital(value ?? 'light')} ${one}s that are of the other value`;
    case 'rejected':
      return `${capital(one)}s you will not use`;
  }
}

/** How much of it the pattern bears. */
export function bearsText({ what, bears }: Trial, ruler: Ruler, one: OneOf): string {
  const less = one === 'square' ? 'smaller' : 'shorter';
  if (what === 'shorter') return bears <= 0 ? 'none' : `${ruler.length(bears)} ${less}`;
  if (what === 'pinked') return bears > 0 ? 'yes' : 'ends only';
  if (bears <= 0) return 'none';
  if (what === 'duplicates') return bears === 1 ? '1 fabric' : `${bears} fabrics`;
  return bears === 1 ? `1 ${one}` : `${bears} ${one}s`;
}

/** The one thing that goes wrong soonest when strips are missing, as a sentence; null when nothing is tried. */
export function breaksFirst(trials: readonly Trial[]): string | null {
  const fewer = trials.filter(({ what }) => what === 'fewer');
  const [first] = fewer.toSorted((a, b) => a.bears - b.bears);
  return first === undefined ? null : first.breaks;
}

/** What another bundle is, in words. */
export function recastName(
  { kind, strips, change, fabric }: Recast,
  nameOf: (fabric: string) => string,
  ruler: Ruler,
  one: OneOf,
): string {
  if (kind === 'without') return `Buy ${nameOf(fabric ?? '')} by the ${ruler.clothUnit}`;
  const split = change.values === undefined ? '' : `: ${fewestText(change.values)}`;
  return kind === 'fewest' ? `As few ${one}s as will do, ${strips}${split}` : `${strips} ${one}s${split}`;
}

function capital(words: string): string {
  return `${words.slice(0, 1).toUpperCase()}${words.slice(1)}`;
}

/** Words of the core as a sentence of their own. */
export function sentence(words: string): string {
  return `${capital(words)}.`;
}
