import { gridText } from '../../drawing/spot.ts';
import type { Point } from '../../drawing/turn.ts';
import { accept, type Maybe, refuse } from '../../measure/finding.ts';
import type { Edit } from '../edit.ts';
import type { Pattern } from '../schema.ts';
import { applied, type DrawingEdit, drawnRecipe, type OfRecipe, type Pins, withBody, withPins } from './drawn.ts';

type Ends = readonly [Point, Point];

/** What is fixed of the sewing: a seam that comes last, or a part that is one unit, made by a method or by any. */
export type PinArgs = OfRecipe &
  ({ readonly first: Ends } | { readonly unit: Ends; readonly method?: string | undefined });

type Pin = Pins[number];

/** Fixes something of how a drawing is sewn. A pin for the same place takes the place of the one before it. */
export const addPin: DrawingEdit<PinArgs> = edit({
  id: 'add-pin',
  name: (args) => ('first' in args ? `Sew the seam${at(args.first)} last` : `Fix one unit${at(args.unit)}`),
  maybe: (pattern, args) => {
    const found = drawnRecipe(pattern, args.recipe);
    if (!found.ok) return found;
    const { body } = found.value;
    const pin = pinOf(args);
    const same = (one: Pin) => samePlace(one.first, pin.first) || samePlace(one.unit, pin.unit);
    const before = body.pins ?? [];
    if (before.some((one) => same(one) && one.method === pin.method)) return accept(pattern);
    const pins = [...before.filter((one) => !same(one)), pin];
    if (pins.length > 60) return refuse('A drawing has 60 pins at most.', 'pins', 'Take one away first.');
    return accept(withBody(pattern, args.recipe, withPins(body, pins)));
  },
});

/** Leaves to the studio what a pin fixed. */
export const removePin: Edit<OfRecipe & { readonly pin: number }> = {
  id: 'remove-pin',
  name: ({ recipe, pin }, pattern) => {
    const found = drawnRecipe(pattern, recipe);
    const one = found.ok ? found.value.body.pins?.[pin] : undefined;
    return one?.first === undefined ? 'Take a unit’s pin away' : 'Take a seam’s pin away';
  },
  apply: (pattern, { recipe, pin }) => {
    const found = drawnRecipe(pattern, recipe);
    const pins = found.ok ? (found.value.body.pins ?? []) : [];
    if (!found.ok || pins[pin] === undefined) return pattern;
    return withBody(
      pattern,
      recipe,
      withPins(
        found.value.body,
        pins.filter((_, i) => i !== pin),
      ),
    );
  },
};

function edit<Args>(given: Omit<DrawingEdit<Args>, 'apply'> & { maybe(p: Pattern, a: Args): Maybe<Pattern> }) {
  return { ...given, apply: applied(given.maybe) };
}

function at([{ x, y }]: Ends): string {
  return ` at ${gridText(x)}, ${gridText(y)}`;
}

function pinOf(args: PinArgs): Pin {
  const pair = ([a, b]: Ends): [[number, number], [number, number]] => [
    [a.x, a.y],
    [b.x, b.y],
  ];
  if ('first' in args) return { first: pair(args.first) };
  return args.method === undefined ? { unit: pair(args.unit) } : { unit: pair(args.unit), method: args.method };
}

function samePlace(a: Pin['first'], b: Pin['first']): boolean {
  if (a === undefined || b === undefined) return false;
  const near = (p: readonly number[], q: readonly number[]) =>
    Math.hypot((p[0] ?? 0) - (q[0] ?? 0), (p[1] ?? 0) - (q[1] ?? 0)) < 1e-6;
  return (near(a[0], b[0]) && near(a[1], b[1])) || (near(a[0], b[1]) && near(a[1], b[0]));
}
