import { rulerOn } from '../../measure/ruler.ts';
import type { Edit } from '../edit.ts';
import type { Pattern, Sashing, Size } from '../schema.ts';
import { changed, lengthWithin, withFields, without } from './list.ts';

const THINNEST = 1 / 16;
const WIDEST = 60;
const MOST_STRIPS = 3;

function withSashing(pattern: Pattern, change: (sashing: Sashing) => Sashing): Pattern {
  const { setting } = pattern;
  if (setting.sashing === undefined) return pattern;
  return withFields(pattern, { setting: withFields(setting, { sashing: change(setting.sashing) }) });
}

type Widths = NonNullable<Size['sashing']>;

/** Every size without its own widths of the strips, or with them changed. */
function withWidths(pattern: Pattern, change: (widths: Widths) => Widths | null): Size[] {
  return changed(
    pattern.sizes,
    ({ sashing }) => sashing !== undefined,
    (size) => {
      const widths = change(size.sashing ?? []);
      return widths === null ? without(size, 'sashing') : withFields(size, { sashing: widths });
    },
  );
}

function known(pattern: Pattern, fabric: string): boolean {
  return pattern.fabrics.some(({ id }) => id === fabric);
}

export const addSashing: Edit<{ readonly fabric: string; readonly width: number }> = {
  id: 'add-sashing',
  name: () => 'Add sashing',
  apply: (pattern, { fabric, width }) => {
    const finished = lengthWithin(width, THINNEST, WIDEST);
    if (finished === null || pattern.setting.sashing !== undefined || !known(pattern, fabric)) return pattern;
    const sashing: Sashing = { strips: [{ fabric, width: finished }] };
    return { ...pattern, setting: { ...pattern.setting, sashing } };
  },
};

export const removeSashing: Edit<Record<string, never>> = {
  id: 'remove-sashing',
  name: () => 'Remove the sashing',
  apply: (pattern) => {
    if (pattern.setting.sashing === undefined) return pattern;
    return { ...pattern, setting: without(pattern.setting, 'sashing'), sizes: withWidths(pattern, () => null) };
  },
};

export const addSashStrip: Edit<{ readonly fabric: string; readonly width: number }> = {
  id: 'add-sash-strip',
  name: () => 'Add a strip to the sashing',
  apply: (pattern, { fabric, width }) => {
    const finished = lengthWithin(width, THINNEST, WIDEST);
    if (finished === null || !known(pattern, fabric)) return pattern;
    return withSashing(pattern, (sashing) => {
      if (sashing.strips.length >= MOST_STRIPS) return sashing;
      return { ...sashing, strips: [...sashing.strips, { fabric, width: finished }] };
    });
  },
};

export const removeSashStrip: Edit<{ readonly strip: number }> = {
  id: 'remove-sash-strip',
  name: () => 'Remove a strip of the sashing',
  apply: (pattern, { strip }) => {
    const strips = pattern.setting.sashing?.strips ?? [];
    if (strips.length < 2 || strips[strip] === undefined) return pattern;
    const others = <T>(list: readonly T[]): T[] => list.filter((_, i) => i !== strip);
    const after = withSashing(pattern, (sashing) => ({ ...sashing, strips: others(sashing.strips) }));
    return { ...after, sizes: withWidths(pattern, (widths) => others(widths)) };
  },
};

export const setSashStrip: Edit<{ readonly strip: number; readonly fabric?: string; readonly width?: number }> = {
  id: 'set-sash-strip',
  name: ({ width }, pattern) =>
    width === undefined
      ? 'Change a fabric of the sashing'
      : `Make a strip of the sashing ${rulerOn(pattern.house.step).length(width)}`,
  apply: (pattern, { strip, fabric, width }) => {
    const finished = width === undefined ? undefined : lengthWithin(width, THINNEST, WIDEST);
    if (finished === null || (fabric !== undefined && !known(pattern, fabric))) return pattern;
    return withSashing(pattern, (sashing) => {
      const one = sashing.strips[strip];
      const strips = changed(
        sashing.strips,
        (is) => is === one,
        (is) => withFields(is, { fabric, width: finished } as Partial<typeof is>),
      );
      return withFields(sashing, { strips });
    });
  },
};

export const setCornerstones: Edit<{ readonly fabric: string | null }> = {
  id: 'set-cornerstones',
  name: ({ fabric }) => (fabric === null ? 'Let the sashing run through' : 'Put cornerstones into the sashing'),
  apply: (pattern, { fabric }) => {
    if (fabric !== null && !known(pattern, fabric)) return pattern;
    return withSashing(pattern, (sashing) =>
      fabric === null ? without(sashing, 'cornerstones') : withFields(sashing, { cornerstones: fabric }),
    );
  },
};

export const setSashingOutside: Edit<{ readonly outside: boolean }> = {
  id: 'set-sashing-outside',
  name: ({ outside }) => (outside ? 'Put sashing round the outside too' : 'Keep sashing inside only'),
  apply: (pattern, { outside }) =>
    withSashing(pattern, (sashing) => (outside ? withFields(sashing, { outside }) : without(sashing, 'outside'))),
};

export const setSashWidthIn: Edit<{ readonly strip: number; readonly size: string; readonly width: number | null }> = {
  id: 'set-sash-width-in',
  name: ({ size, width }, pattern) => {
    const name = pattern.sizes.find(({ id }) => id === size)?.name ?? size;
    return `Make the sashing ${width === null ? 'as in the other sizes' : rulerOn(pattern.house.step).length(width)} in ${name}`;
  },
  apply: (pattern, { strip, size, width }) => {
    const strips = pattern.setting.sashing?.strips ?? [];
    const finished = width === null ? null : lengthWithin(width, 0, WIDEST);
    if (strips[strip] === undefined || (width !== null && finished === null)) return pattern;
    const sizes = changed(
      pattern.sizes,
      ({ id }) => id === size,
      (one) => {
        const widths = strips.map((_, i) => (i === strip ? finished : (one.sashing?.[i] ?? null)));
        if (widths.every((is) => is === null)) return without(one, 'sashing');
        const same = widths.every((is, i) => is === (one.sashing?.[i] ?? null));
        return same ? one : withFields(one, { sashing: widths });
      },
    );
    return withFields(pattern, { sizes });
  },
};
