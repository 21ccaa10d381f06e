import { toRuler } from '../../measure/inches.ts';
import { CENTIMETRE, METRE, type Units, unitsOn } from '../../measure/metric.ts';
import type { Edit } from '../edit.ts';
import type { Setting } from '../schema.ts';
import { lengthWithin } from './list.ts';

/** What a house that sews in centimetres takes (common practice): seams of 0.75, a ruler of millimetres, cloth of 110 to 115. */
const METRIC_HOUSE = {
  seam: 0.75 * CENTIMETRE,
  step: 0.1 * CENTIMETRE,
  usableWidth: 100 * CENTIMETRE,
  squaring: 5 * CENTIMETRE,
  yardStep: METRE / 10,
};

const INCH_HOUSE = { seam: 1 / 4, step: 1 / 8, usableWidth: 40, squaring: 2, yardStep: 1 / 8 };

/**
 * Takes the house to another ruler. What is designed is taken to the round marks of that ruler that are nearest: blocks to whole
 * centimetres or half inches, borders, sashing and finishing to half centimetres or eighths. It is then another quilt, on
 * that ruler, and not one whose measures are written in other words.
 */
export const setRuler: Edit<{
  readonly units: Units;
  /** Finished blocks by the size’s id whose patches fall on the new ruler; left out, the nearest round ones. */
  readonly blocks?: Readonly<Record<string, number>>;
}> = {
  id: 'set-ruler',
  name: ({ units }) => `Measure in ${units}`,
  apply: (pattern, { units, blocks = {} }) => {
    if (unitsOn(pattern.house.step) === units) return pattern;
    const metric = units === 'centimetres';
    const near = (length: number, step: number) => Math.max(step, toRuler(length, step, 'near'));
    const fine = (length: number) => (length === 0 ? 0 : near(length, metric ? CENTIMETRE / 2 : 1 / 8));
    const all = (widths: Lengths) => Object.fromEntries(Object.entries(widths).map(([id, width]) => [id, fine(width)]));
    const house = withOversize({ ...pattern.house, ...(metric ? METRIC_HOUSE : INCH_HOUSE) }, all);
    const blockChoices = pattern.blocks.map((block) => withOversize(block, all));
    const sizes = pattern.sizes.map((size) => ({
      ...size,
      block: lengthWithin(blocks[size.id] ?? Number.NaN, 1 / 2, 120) ?? near(size.block, metric ? CENTIMETRE : 1 / 2),
      borders: all(size.borders),
      ...(size.borderEnds === undefined ? {} : { borderEnds: all(size.borderEnds) }),
      ...(size.sashing === undefined ? {} : { sashing: size.sashing.map((w) => (w === null ? null : fine(w))) }),
    }));
    const borders = pattern.borders.map((border) => ({
      ...border,
      width: fine(border.width),
      ...(border.ends === undefined ? {} : { ends: fine(border.ends) }),
    }));
    const binding = { ...pattern.binding, strip: fine(pattern.binding.strip) };
    const { wide } = pattern.backing;
    const reach = { beyond: fine(pattern.backing.beyond), ...(wide === undefined ? {} : { wide: fine(wide) }) };
    const backing = { ...pattern.backing, ...reach };
    return {
      ...pattern,
      ...{ house, blocks: blockChoices, sizes, borders, binding, backing },
      setting: settingOn(pattern.setting, fine),
    };
  },
};

type Lengths = Readonly<Record<string, number>>;

/** What is added to pieces that are trimmed, on the other ruler. */
function withOversize<Holder extends { readonly oversize?: Lengths | undefined }>(
  holder: Holder,
  all: (lengths: Lengths) => Lengths,
): Holder {
  return holder.oversize === undefined ? holder : { ...holder, oversize: all(holder.oversize) };
}

function settingOn(setting: Setting, fine: (length: number) => number): Setting {
  const { sashing } = setting;
  const strips = sashing?.strips.map((strip) => ({ ...strip, width: fine(strip.width) }));
  const sashed =
    sashing === undefined || strips === undefined ? setting : { ...setting, sashing: { ...sashing, strips } };
  if (sashed.kind !== 'on-point' || sashed.triangles.float === undefined) return sashed;
  return { ...sashed, triangles: { ...sashed.triangles, float: fine(sashed.triangles.float) } };
}
