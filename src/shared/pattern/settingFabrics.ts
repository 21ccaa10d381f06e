import type { Border, Sashing, Setting } from './schema.ts';

/** A fabric that a setting asks for: its id, what it is for and where the document says so. */
export interface FabricAsked {
  readonly fabric: string;
  readonly name: string;
  readonly path: string;
}

/** Every fabric a setting names. */
export function settingFabrics(setting: Setting): readonly FabricAsked[] {
  const fill = setting.kind === 'strips' ? setting.fill : undefined;
  const filled = fill === undefined ? [] : [{ fabric: fill, name: 'the plain pieces', path: 'setting.fill' }];
  return [...sashingFabrics(setting.sashing), ...triangleFabrics(setting), ...filled];
}

function sashingFabrics(sashing: Sashing | undefined): readonly FabricAsked[] {
  if (sashing === undefined) return [];
  const at = 'setting.sashing';
  const strips = sashing.strips.map(({ fabric }, i) => ({
    fabric,
    name: 'the sashing',
    path: `${at}.strips[${i}].fabric`,
  }));
  const { cornerstones } = sashing;
  if (cornerstones === undefined) return strips;
  return [...strips, { fabric: cornerstones, name: 'the cornerstones', path: `${at}.cornerstones` }];
}

function triangleFabrics(setting: Setting): readonly FabricAsked[] {
  if (setting.kind !== 'on-point') return [];
  const { fabric, corners } = setting.triangles;
  const sides = { fabric, name: 'the side triangles', path: 'setting.triangles.fabric' };
  if (corners === undefined) return [sides];
  return [sides, { fabric: corners, name: 'the corner triangles', path: 'setting.triangles.corners' }];
}

/** The setting with another fabric for every fabric it names. */
export function withSettingFabrics(setting: Setting, other: (fabric: string) => string): Setting {
  const { sashing } = setting;
  const sashed = sashing === undefined ? setting : { ...setting, sashing: withSashingFabrics(sashing, other) };
  if (sashed.kind === 'strips') return sashed.fill === undefined ? sashed : { ...sashed, fill: other(sashed.fill) };
  if (sashed.kind !== 'on-point') return sashed;
  const { fabric, corners } = sashed.triangles;
  const own = corners === undefined ? {} : { corners: other(corners) };
  return { ...sashed, triangles: { ...sashed.triangles, fabric: other(fabric), ...own } };
}

function withSashingFabrics(sashing: Sashing, other: (fabric: string) => string): Sashing {
  const strips = sashing.strips.map((strip) => ({ ...strip, fabric: other(strip.fabric) }));
  const { cornerstones } = sashing;
  return { ...sashing, strips, ...(cornerstones === undefined ? {} : { cornerstones: other(cornerstones) }) };
}

/** Every fabric a border names. @param path where it stands in the document */
export function borderFabrics({ fabric, name, cornerstones }: Border, path: string): readonly FabricAsked[] {
  const own = { fabric, name, path: `${path}.fabric` };
  if (cornerstones === undefined) return [own];
  return [own, { fabric: cornerstones, name: `the corners of ${name}`, path: `${path}.cornerstones` }];
}

/** The border with another fabric for every fabric it names. */
export function withBorderFabrics(border: Border, other: (fabric: string) => string): Border {
  const { fabric, cornerstones } = border;
  const corners = cornerstones === undefined ? {} : { cornerstones: other(cornerstones) };
  return { ...border, fabric: other(fabric), ...corners };
}
