import type { Drawing } from '../../drawing/drawing.ts';
import { type Turn, turnPoint } from '../../drawing/turn.ts';
import { refineGrid, regrid, turnDrawing as turned } from '../../drawing/whole.ts';
import { accept, type Maybe, refuse } from '../../measure/finding.ts';
import type { DrawingBody, Recipe } from '../../recipe/schema.ts';
import type { Edit } from '../edit.ts';
import { heldBy } from '../recipes.ts';
import type { BlockChoice, Pattern } from '../schema.ts';
import { drawingEdit, type OfRecipe, type Pins, withBody } from './drawn.ts';
import { changed, freeId, whole } from './list.ts';

/**
 * Makes a block one that is drawn freely: from now on it has a recipe of its own, under a name of its own, with this
 * drawing. What only the recipe before it needed goes.
 */
export const startDrawing: Edit<{
  readonly block: string;
  readonly body: DrawingBody;
  /** Of the new recipe; left out, one that no other recipe of the pattern has. */
  readonly id?: string;
}> = {
  id: 'start-drawing',
  name: ({ block }, pattern) => {
    const id = pattern.blocks.find((one) => one.id === block)?.recipe;
    const drawn = pattern.recipes.find((recipe) => recipe.id === id)?.body.kind === 'drawing';
    return drawn ? `Draw block ${block} afresh` : `Draw block ${block} freely`;
  },
  apply: (pattern, { block, body, id: wanted }) => {
    const choice = pattern.blocks.find(({ id }) => id === block);
    const recipe = pattern.recipes.find(({ id }) => id === choice?.recipe);
    if (choice === undefined || recipe === undefined) return pattern;
    if (recipe.body.kind === 'drawing') return withBody(pattern, recipe.id, body);
    const drawn = drawnFrom(pattern, recipe, body, wanted);
    const blocks = changed(
      pattern.blocks,
      ({ id }) => id === block,
      (one) => ({ ...one, recipe: drawn.id, parameters: {}, methods: methodsByKind(one) }),
    );
    return { ...pattern, recipes: stillNeeded([...pattern.recipes, drawn], pattern, blocks), blocks };
  },
};

function drawnFrom(pattern: Pattern, recipe: Recipe, body: DrawingBody, wanted = `${recipe.id}-drawn`): Recipe {
  const id = freeId(
    wanted,
    pattern.recipes.map((one) => one.id),
  );
  return { ...recipe, id, name: `${recipe.name}, drawn`.slice(0, 200), parameters: [], body };
}

/** Units are named anew when they are found in a drawing; wishes for a kind of unit hold. */
function methodsByKind({ methods }: BlockChoice): Record<string, string> {
  return Object.fromEntries(Object.entries(methods).filter(([of]) => !of.includes(' ')));
}

/** The recipes without those that blocks needed before and none needs now. */
function stillNeeded(all: readonly Recipe[], before: Pattern, blocks: Pattern['blocks']): readonly Recipe[] {
  const was = reached(all, before.blocks);
  const now = reached(all, blocks);
  return all.filter(({ id }) => now.has(id) || !was.has(id));
}

function reached(recipes: readonly Recipe[], blocks: Pattern['blocks']): ReadonlySet<string> {
  const found = new Set(blocks.map(({ recipe }) => recipe));
  for (const id of found) {
    const recipe = recipes.find((one) => one.id === id);
    for (const held of recipe === undefined ? [] : heldBy(recipe)) found.add(held);
  }
  return found;
}

/** Draws lines between the grid's lines: `times` as many. */
export const refineDrawing = drawingEdit<OfRecipe & { readonly times: number }>(
  'refine-drawing',
  ({ times }) => `Make the grid ${whole(times, 1, 8)} times as fine`,
  (drawing, { times }) => {
    const many = whole(times, 1, 8);
    return many === 1 ? accept(drawing) : accept(refineGrid(drawing, many));
  },
  (pins, _, { times }) => movedPins(pins, ([x, y]) => [x * whole(times, 1, 8), y * whole(times, 1, 8)]),
);

/** Lays another grid under the drawing. A block that is one patch may change its shape; any other keeps it. */
export const regridDrawing = drawingEdit<OfRecipe & { readonly across: number; readonly down: number }>(
  'regrid-drawing',
  ({ across, down }) => `Draw on a grid of ${whole(across, 1, 400)} by ${whole(down, 1, 400)}`,
  (drawing, args) => maybeRegrid(drawing, whole(args.across, 1, 400), whole(args.down, 1, 400)),
  (pins, { width }, { across }) =>
    movedPins(pins, ([x, y]) => [(x * whole(across, 1, 400)) / width, (y * whole(across, 1, 400)) / width]),
);

function maybeRegrid(drawing: Drawing, across: number, down: number): Maybe<Drawing> {
  const { width, height, patches } = drawing;
  if (across === width && down === height) return accept(drawing);
  const [only, ...more] = patches;
  if (only !== undefined && more.length === 0) {
    const corners = only.outline.map((vertex) => drawing.points[vertex] as { x: number; y: number });
    const points = corners.map(({ x, y }) => ({ x: (x * across) / width, y: (y * down) / height }));
    return accept({ width: across, height: down, points, patches: [{ ...only, outline: points.map((_, i) => i) }] });
  }
  if (Math.abs((height * across) / width - down) < 1e-9) return accept(regrid(drawing, across, down));
  const mend = `Choose a grid of the block’s own shape, such as ${across} by ${shapely(drawing, across)}.`;
  return refuse(`A grid of ${across} by ${down} would stretch the drawing.`, 'across', mend);
}

function shapely({ width, height }: Drawing, across: number): number {
  return Number(((height * across) / width).toFixed(2));
}

function turnName({ mirrored, quarters }: Turn): string {
  if (mirrored) return quarters === 0 ? 'Mirror the drawing left to right' : 'Mirror the drawing top to bottom';
  return quarters === 2 ? 'Turn the drawing half round' : 'Turn the drawing a quarter';
}

/** Turns or mirrors the whole drawing. */
export const turnDrawing = drawingEdit<OfRecipe & { readonly by: Turn }>(
  'turn-drawing',
  ({ by }) => turnName(by),
  (drawing, { by }) => accept(by.quarters === 0 && !by.mirrored ? drawing : turned(drawing, by)),
  (pins, { width, height }, { by }) =>
    movedPins(pins, ([x, y]) => {
      const place = turnPoint({ x, y }, by, width, height);
      return [place.x, place.y];
    }),
);

type Place = [number, number];

function movedPins(pins: Pins, move: (place: Place) => Place): Pins {
  return pins.map(({ first, unit, ...rest }) => ({
    ...rest,
    ...(first === undefined ? {} : { first: [move(first[0]), move(first[1])] as [Place, Place] }),
    ...(unit === undefined ? {} : { unit: [move(unit[0]), move(unit[1])] as [Place, Place] }),
  }));
}
