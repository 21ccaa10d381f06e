import type { Drawing } from '../../drawing/drawing.ts';
import { placeText } from '../../drawing/spot.ts';
import type { Point } from '../../drawing/turn.ts';
import { accept, type Maybe, refuse } from '../../measure/finding.ts';
import { drawnBody, readDrawnBody } from '../../recipe/drawn.ts';
import type { DrawingBody, Recipe } from '../../recipe/schema.ts';
import type { Edit } from '../edit.ts';
import type { Pattern } from '../schema.ts';
import { changed, withFields } from './list.ts';

/**
 * An act on a drawing. A hand may slip: `maybe` gives the document after the act, or says why it cannot be and where;
 * `apply` leaves the document as it was then.
 */
export interface DrawingEdit<Args> extends Edit<Args> {
  maybe(pattern: Pattern, args: Args): Maybe<Pattern>;
}

/** The recipe an act is about. */
export interface OfRecipe {
  readonly recipe: string;
}

/** An act on the drawing of one recipe of the pattern; its pins stay unless the act gives others. */
export function drawingEdit<Args extends OfRecipe>(
  id: string,
  name: Edit<Args>['name'],
  change: (drawing: Drawing, args: Args) => Maybe<Drawing>,
  pins: (pins: Pins, drawing: Drawing, args: Args) => Pins = (before) => before,
): DrawingEdit<Args> {
  const maybe = (pattern: Pattern, args: Args): Maybe<Pattern> => {
    const found = drawnRecipe(pattern, args.recipe);
    if (!found.ok) return found;
    const { body, drawing, path } = found.value;
    const next = change(drawing, args);
    if (!next.ok) return next;
    if (next.value === drawing) return accept(pattern);
    if (next.value.width > 400 || next.value.height > 400)
      return refuse('A grid has 400 units at most.', path, 'Leave the grid as it is.');
    const kept = body.pins === undefined ? [] : pins(body.pins, drawing, args);
    return accept(withBody(pattern, args.recipe, withPins(drawnBody(next.value), kept)));
  };
  return { id, name, maybe, apply: applied(maybe) };
}

/** `apply` of an act that may be refused. */
export function applied<Args>(maybe: DrawingEdit<Args>['maybe']): Edit<Args>['apply'] {
  return (pattern, args) => {
    const after = maybe(pattern, args);
    return after.ok ? after.value : pattern;
  };
}

export type Pins = NonNullable<DrawingBody['pins']>;

/** The body with these pins; without any it has no list of them. */
export function withPins(body: DrawingBody, pins: Pins): DrawingBody {
  const { pins: _was, ...rest } = body;
  return pins.length === 0 ? rest : { ...rest, pins };
}

/** A recipe that is drawn freely, with its drawing. */
interface Drawn {
  readonly body: DrawingBody;
  readonly drawing: Drawing;
  readonly path: string;
}

export function drawnRecipe(pattern: Pattern, id: string): Maybe<Drawn> {
  const index = pattern.recipes.findIndex((recipe) => recipe.id === id);
  const recipe = pattern.recipes[index];
  const path = `recipes[${index}].body`;
  if (recipe === undefined) return refuse(`There is no recipe “${id}” here.`, 'recipes');
  const { body } = recipe;
  if (body.kind !== 'drawing') return refuse(`“${recipe.name}” is not drawn freely.`, path, 'Draw it freely first.');
  const read = readDrawnBody(body, path);
  return read.ok ? accept({ body, drawing: read.value, path }) : read;
}

export function withBody(pattern: Pattern, id: string, body: Recipe['body']): Pattern {
  return withRecipe(pattern, id, (recipe) => withFields(recipe, { body }));
}

export function withRecipe(pattern: Pattern, id: string, change: (recipe: Recipe) => Recipe): Pattern {
  const recipes = changed(pattern.recipes, (recipe) => recipe.id === id, change);
  return withFields(pattern, { recipes });
}

export function recipeName(pattern: Pattern, id: string): string {
  return pattern.recipes.find((recipe) => recipe.id === id)?.name ?? id;
}

export function roleName(pattern: Pattern, recipe: string, role: string): string {
  return pattern.recipes.find(({ id }) => id === recipe)?.roles.find(({ id }) => id === role)?.name ?? role;
}

/** “ at 2 across, 1 down”, for the name of an act. */
export function atText(place: Point | undefined): string {
  return place === undefined ? '' : ` at ${placeText(place)}`;
}
