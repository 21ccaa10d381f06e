import { fractionOf, inchesText, sizeText, yardsText } from './fraction.ts';
import { type Inches, toRuler, type Way } from './inches.ts';
import { CENTIMETRE, centimetresOf, type Units, unitsOn } from './metric.ts';
import { readLength } from './read.ts';
import { explain, type Traced, tracedText } from './traced.ts';

/**
 * How a house says lengths and reads them. Views, findings and the names of edits ask a ruler, and nothing but this decides
 * between inches and centimetres. Lengths are inches, cloth is yards, going in and coming out.
 */
export interface Ruler {
  readonly units: Units;
  /** What stands behind a number in a field: `″` or `cm`. */
  readonly mark: string;
  /** `8½″`, or `21.5 cm`. */
  readonly length: (value: Inches) => string;
  /** `2½″ × 4½″`, or `6.5 × 11.5 cm`; width first. */
  readonly size: (width: Inches, height: Inches) => string;
  /** What cloth is sold by: `yard`, or `metre`. */
  readonly clothUnit: string;
  /** What a length that is only told, not cut, is rounded to: an eighth or a millimetre. */
  readonly told: Inches;
  /** A length that is only told, so rounded. */
  readonly about: (value: Inches, way?: Way) => string;
  /** `2⅝ yd`, or `2.4 m`. */
  readonly cloth: (yards: number) => string;
  readonly traced: (traced: Traced) => string;
  /** The one short sum that made a number. */
  readonly why: (traced: Traced) => string;
  /** A length without its mark, as it stands in a field. */
  readonly bare: (value: Inches) => string;
  /** What was typed, as inches; a unit written behind it counts for more than the ruler. Null when it is no length. */
  readonly read: (text: string) => Inches | null;
  /** A step of so many inches in round marks of the ruler. */
  readonly stepOf: (step: Inches) => Inches;
}

function made(units: Units): Ruler {
  const metric = units === 'centimetres';
  const told = metric ? CENTIMETRE / 10 : 1 / 8;
  return {
    units,
    mark: metric ? 'cm' : '″',
    clothUnit: metric ? 'metre' : 'yard',
    told,
    length: (value) => inchesText(value, units),
    size: (width, height) => sizeText(width, height, units),
    about: (value, way = 'near') => inchesText(toRuler(value, told, way), units),
    cloth: (yards) => yardsText(yards, units),
    traced: (traced) => tracedText(traced, units),
    why: (traced) => explain(traced, units),
    bare: metric ? centimetresOf : fractionOf,
    read: (text) => readLength(text, units),
    stepOf: metric ? metricStep : (step) => step,
  };
}

/** Half a millimetre in place of a sixteenth, half a centimetre of an eighth or a quarter, whole ones of what is more. */
function metricStep(step: Inches): Inches {
  if (step < 1 / 8) return CENTIMETRE / 20;
  return step < 1 / 2 ? CENTIMETRE / 2 : Math.round(step) * CENTIMETRE;
}

const RULERS: Readonly<Record<Units, Ruler>> = { inches: made('inches'), centimetres: made('centimetres') };

/** The ruler of inches, where no house says otherwise. */
export const INCH_RULER = RULERS.inches;

/** The ruler that says these units. */
export function rulerIn(units: Units): Ruler {
  return RULERS[units];
}

/** The ruler of a house whose marks are `step` inches apart. */
export function rulerOn(step: Inches): Ruler {
  return RULERS[unitsOn(step)];
}
