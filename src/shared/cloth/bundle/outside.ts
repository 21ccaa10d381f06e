import { longer } from '../../measure/inches.ts';
import type { Bundle } from '../../pattern/schema.ts';
import type { PieceLine } from '../cloth.ts';
import { isSquares } from './squares.ts';
import type { Outside } from './wants.ts';

/** Why a line of the chart is not cut from the bundle; null when it is. */
export function whyOutside(line: PieceLine, bundle: Bundle): Outside['why'] | null {
  if (!isBundled(line.fabric, bundle)) return 'another fabric';
  if (isSquares(bundle) && line.cutAs !== 'piece') return 'too long';
  if (longer(line.height.value, bundle.strip) || line.lengthwise === true) return 'too wide';
  return line.cutAs === 'piece' && longer(line.width.value, bundle.length) ? 'too long' : null;
}

/** Whether a fabric of the pattern comes from the bundle at all. */
export function isBundled(fabric: string, { fabrics }: Bundle): boolean {
  return fabrics === undefined || fabrics.includes(fabric);
}

/** The lines that have to be bought as yards: all of them where there is no bundle. */
export function outsideBundle(lines: readonly PieceLine[], bundle: Bundle | undefined): readonly PieceLine[] {
  return bundle === undefined ? lines : lines.filter((line) => whyOutside(line, bundle) !== null);
}
