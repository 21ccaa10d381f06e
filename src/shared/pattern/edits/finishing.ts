import type { Edit } from '../edit.ts';
import type { Bundle } from '../schema.ts';
import { lengthWithin, withFields } from './list.ts';

export const setBinding: Edit<{ readonly fabric?: string; readonly strip?: number }> = {
  id: 'set-binding',
  name: ({ strip }) =>
    strip === undefined ? 'Change the fabric of the binding' : 'Change the width of the binding strips',
  apply: (pattern, { fabric, strip }) => {
    const width = strip === undefined ? null : lengthWithin(strip, 1, 6);
    const fields = { ...(fabric === undefined ? {} : { fabric }), ...(width === null ? {} : { strip: width }) };
    return withFields(pattern, { binding: withFields(pattern.binding, fields) });
  },
};

export const setBacking: Edit<{ readonly fabric?: string; readonly beyond?: number }> = {
  id: 'set-backing',
  name: ({ beyond }) =>
    beyond === undefined ? 'Change the fabric of the backing' : 'Change how far the backing reaches',
  apply: (pattern, { fabric, beyond }) => {
    const reach = beyond === undefined ? null : lengthWithin(beyond, 0, 20);
    const fields = { ...(fabric === undefined ? {} : { fabric }), ...(reach === null ? {} : { beyond: reach }) };
    return withFields(pattern, { backing: withFields(pattern.backing, fields) });
  },
};

/** The bundle the pattern is made from, as far as it is said: what is left out stays, or is as a bundle usually is. */
export const setBundle: Edit<Partial<Bundle>> = {
  id: 'set-bundle',
  name: (_, { bundle }) => (bundle === undefined ? 'Make it from a bundle of strips' : 'Change the bundle of strips'),
  apply: (pattern, change) => {
    const before = pattern.bundle ?? USUAL_BUNDLE;
    const strip = lengthWithin(change.strip ?? before.strip, 0.5, 12) ?? before.strip;
    const length = lengthWithin(change.length ?? before.length, 6, 60) ?? before.length;
    const counts = change.values ?? before.values;
    const values = { light: strips(counts.light), medium: strips(counts.medium), dark: strips(counts.dark) };
    const known = (ids: readonly string[]) => ids.filter((id) => pattern.fabrics.some((fabric) => fabric.id === id));
    const fabrics = change.fabrics ?? before.fabrics;
    const match = known(change.match ?? before.match);
    const price = change.price ?? before.price;
    const bundle = {
      ...{ strip, length, values, match },
      ...(fabrics === undefined ? {} : { fabrics: known(fabrics) }),
      ...(price === undefined ? {} : { price: lengthWithin(price, 0, 100_000) ?? 0 }),
    };
    const same =
      pattern.bundle !== undefined && JSON.stringify(inOrder(bundle)) === JSON.stringify(inOrder(pattern.bundle));
    return same ? pattern : { ...pattern, bundle };
  },
};

/** Forty strips 2½ × 42, half light and half dark (common practice). */
const USUAL_BUNDLE: Bundle = { strip: 2.5, length: 42, values: { light: 20, medium: 0, dark: 20 }, match: [] };

function strips(many: number): number {
  return Number.isFinite(many) ? Math.min(400, Math.max(0, Math.round(many))) : 0;
}

function inOrder({
  strip,
  length,
  values: { light, medium, dark },
  match,
  fabrics,
  price,
}: Bundle): readonly unknown[] {
  return [strip, length, light, medium, dark, match, fabrics ?? null, price ?? null];
}

export const removeBundle: Edit<Record<string, never>> = {
  id: 'remove-bundle',
  name: () => 'Use no bundle',
  apply: (pattern) => {
    if (pattern.bundle === undefined) return pattern;
    const { bundle: _gone, ...rest } = pattern;
    return rest;
  },
};
