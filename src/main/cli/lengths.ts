import type { Units } from '../../shared/measure/metric.ts';
import { readLength } from '../../shared/measure/read.ts';
import { rulerIn } from '../../shared/measure/ruler.ts';
import { Refused } from '../refusal.ts';

const LONGEST = 400;

/**
 * A length as it was typed: `12`, `12 1/2`, `30cm`; without a unit behind it, in those of the pattern's ruler.
 * @param of what it was typed for; @param least inches
 * @throws Refused when it is none, or shorter or longer than a quilt can be
 */
export function lengthOf(text: string, of: string, least: number, units: Units = 'inches'): number {
  const length = readLength(text, units);
  if (length !== null && length >= least && length <= LONGEST) return length;
  const { length: say } = rulerIn(units);
  throw new Refused(
    'bad-input',
    `${of} must be a length such as 12, 12.5, 12in or 30cm, from ${say(least)} to ${say(LONGEST)}, not “${text}”.`,
  );
}

/** A width and a height as they were typed: `60x80`, `60 × 80`, `150x200cm`; a unit behind both is meant for both. */
export function sizeOf(
  text: string,
  of: string,
  units: Units = 'inches',
): { readonly width: number; readonly height: number } {
  const parts = text.split(/[x×]/i);
  const unit = /[a-z"″]+\s*$/i.exec(text)?.[0] ?? '';
  const [width, height] = parts;
  if (parts.length !== 2 || width === undefined || height === undefined)
    throw new Refused('bad-input', `${of} must be a width and a height such as 60x80 or 150x200cm, not “${text}”.`);
  const ownUnit = /[a-z"″]/i.test(width) ? '' : unit;
  return { width: lengthOf(`${width}${ownUnit}`, of, 1, units), height: lengthOf(height, of, 1, units) };
}
