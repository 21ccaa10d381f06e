import type { Edit } from '../edit.ts';
import type { Bundle, Pattern } from '../schema.ts';
import { lengthWithin, withFields, without } from './list.ts';

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

/** How the binding is cut: straight across the cloth, or on the bias in strips or in one. */
export type BindingCut = 'straight' | NonNullable<Pattern['binding']['cut']>;

const BINDING_CUT_NAMES: Readonly<Record<BindingCut, string>> = {
  straight: 'Cut the binding straight across the cloth',
  bias: 'Cut the binding in bias strips',
  continuous: 'Cut the binding as one continuous bias strip',
};

export const setBindingCut: Edit<{ readonly cut: BindingCut }> = {
  id: 'set-binding-cut',
  name: ({ cut }) => BINDING_CUT_NAMES[cut],
  apply: (pattern, { cut }) => {
    const { binding } = pattern;
    return withFields(pattern, {
      binding: cut === 'straight' ? without(binding, 'cut') : withFields(binding, { cut }),
    });
  },
};

/** How the backing is made, in every size: what is left out is as usual, so nothing at all is the way that takes least of the usual cloth. */
export const setBackingWay: Edit<{ readonly run?: 'down' | 'across'; readonly wide?: number }> = {
  id: 'set-backing-way',
  name: ({ run, wide }) => {
    const cloth = wide === undefined ? 'usual' : 'wide';
    if (run === undefined) return `Make the backing of ${cloth} cloth the way that takes least`;
    return `Make the backing of ${cloth} cloth running ${run}`;
  },
  apply: (pattern, { run, wide }) => {
    const width = wide === undefined ? null : lengthWithin(wide, 60, 160);
    const { backing } = pattern;
    const ran = run === undefined ? without(backing, 'run') : withFields(backing, { run });
    return withFields(pattern, {
      backing: width === null ? without(ran, 'wide') : withFields(ran, { wide: width }),
    });
  },
};

/** The bundle the pattern is made from, as far as it is said: what is left out stays, or is as a bundle usually is. */
export const setBundle: Edit<Partial<Bundle>> = {
  id: 'set-bundle',
  name: (_, { bundle }) => (bundle === undefined ? 'Make it from a bundle of strips' : 'Change the bundle of strips'),
  apply: (pattern, change) => {
    const before = pattern.bundle ?? USUAL_BUNDLE;
    const strip = lengthWithin(change.strip ?? before.strip, 0.5, 12) ?? before.strip;
    const length = lengthWithin(change.length ?? before.length, 0.5, 60) ?? before.length;
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
