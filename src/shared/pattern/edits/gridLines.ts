import type { Amount, GridBody, Recipe } from '../../recipe/schema.ts';
import { readRow, type Token, writeRow } from '../../recipe/token.ts';
import type { Edit } from '../edit.ts';
import { refitted, usedKey } from './cells.ts';
import { type OfRecipe, recipeName, withRecipe } from './drawn.ts';
import { lengthWithin, withFields } from './list.ts';

/** A column or a row of a grid. */
export interface OfLine extends OfRecipe {
  readonly along: 'columns' | 'rows';
  /** Which, from the left or the top; 0 is the first. */
  readonly at: number;
}

/** Most columns or rows of a grid. */
const MOST = 60;

const word = ({ along }: OfLine) => (along === 'columns' ? 'column' : 'row');

/** Puts one more column or row beside one, just like it. */
export const addGridLine: Edit<OfLine> = {
  id: 'add-grid-line',
  name: (args, pattern) => `Add a ${word(args)} to ${recipeName(pattern, args.recipe)}`,
  apply: (pattern, args) =>
    withGrid(pattern, args, (body, { along, at }) =>
      body[along].length >= MOST ? body : withLines(body, along, twice(at)),
    ),
};

/** Takes a column or row away; the last one stays. */
export const removeGridLine: Edit<OfLine> = {
  id: 'remove-grid-line',
  name: (args, pattern) => `Take a ${word(args)} from ${recipeName(pattern, args.recipe)}`,
  apply: (pattern, args) =>
    withGrid(pattern, args, (body, { along, at }) =>
      body[along].length < 2 ? body : withLines(body, along, gone(at)),
    ),
};

/** How wide a column or how high a row is, in grid units. Units that do not suit their cells any more become plain cloth. */
export const setGridSpan: Edit<OfLine & { readonly span: number }> = {
  id: 'set-grid-span',
  name: (args, pattern) =>
    `Change the ${args.along === 'columns' ? 'width' : 'height'} of a ${word(args)} of ${recipeName(pattern, args.recipe)}`,
  apply: (pattern, args) =>
    withGrid(pattern, args, (body, { along, at, span }, recipe) => {
      const units = lengthWithin(span, 1 / 8, 100);
      if (units === null || body[along][at] === units) return body;
      return refitted(recipe, { ...body, [along]: body[along].map((was, i) => (i === at ? units : was)) });
    }),
};

function withGrid<Args extends OfLine>(
  pattern: Parameters<Edit<Args>['apply']>[0],
  args: Args,
  change: (body: GridBody, args: Args, recipe: Recipe) => GridBody,
) {
  return withRecipe(pattern, args.recipe, (recipe) => {
    const { body } = recipe;
    if (body.kind !== 'grid' || body[args.along][args.at] === undefined) return recipe;
    return withFields(recipe, { body: change(body, args, recipe) });
  });
}

type Lines = <T>(list: readonly T[]) => T[];

const twice =
  (at: number): Lines =>
  (list) => [...list.slice(0, at + 1), ...list.slice(at)];

const gone =
  (at: number): Lines =>
  (list) =>
    list.filter((_, i) => i !== at);

function withLines(body: GridBody, along: OfLine['along'], lines: Lines): GridBody {
  const spans: Amount[] = lines(body[along]);
  if (along === 'rows') return withLayout({ ...body, rows: spans }, lines(body.layout));
  const rows = body.layout.map(readRow);
  if (rows.some((row) => row.some((entry) => typeof entry === 'string'))) return body;
  return withLayout(
    { ...body, columns: spans },
    rows.map((row) => writeRow(lines(row as readonly Token[]))),
  );
}

function withLayout(body: GridBody, layout: string[]): GridBody {
  return { ...body, key: usedKey(body.key, layout), layout };
}
