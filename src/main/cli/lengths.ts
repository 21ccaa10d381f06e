import { MM_PER_INCH } from '../../shared/measure/inches.ts';
import { Refused } from '../refusal.ts';

const LONGEST = 400;

/** Inches of so many of a unit. */
function inInches(many: number, unit: string): number {
  if (unit === 'cm') return (many * 10) / MM_PER_INCH;
  return unit === 'mm' ? many / MM_PER_INCH : many;
}

/**
 * A length as it was typed: inches, or centimetres or millimetres with their unit behind: `12`, `12.5`, `30cm`.
 * @param of what it was typed for; @param least inches
 * @throws Refused when it is none, or shorter or longer than a quilt can be
 */
export function lengthOf(text: string, of: string, least: number): number {
  const match = /^\s*(\d+(?:\.\d+)?|\.\d+)\s*(in|cm|mm|"|″)?\s*$/i.exec(text);
  const length = match === null ? Number.NaN : inInches(Number(match[1]), (match[2] ?? '').toLowerCase());
  if (Number.isFinite(length) && length >= least && length <= LONGEST) return length;
  throw new Refused(
    'bad-input',
    `${of} must be a length such as 12, 12.5 or 30cm, from ${least} to ${LONGEST} inches, not “${text}”.`,
  );
}

/** A width and a height as they were typed: `60x80`, `60 × 80`, `150x200cm`. */
export function sizeOf(text: string, of: string): { readonly width: number; readonly height: number } {
  const parts = text.split(/[x×]/i);
  const unit = /(?:in|cm|mm|"|″)\s*$/i.exec(text)?.[0] ?? '';
  const [width, height] = parts;
  if (parts.length !== 2 || width === undefined || height === undefined)
    throw new Refused('bad-input', `${of} must be a width and a height such as 60x80 or 150x200cm, not “${text}”.`);
  const ownUnit = /[a-z"″]/i.test(width) ? '' : unit;
  return { width: lengthOf(`${width}${ownUnit}`, of, 1), height: lengthOf(height, of, 1) };
}
