import { afterTurn, type Turn } from '../../drawing/turn.ts';
import type { GridBody, Recipe, Value } from '../../recipe/schema.ts';
import { readRow, readToken, type Token, writeRow, writeToken } from '../../recipe/token.ts';
import type { Edit } from '../edit.ts';
import { withRevisions } from '../revisions.ts';
import type { BlockChoice, Border, Pattern, Setting } from '../schema.ts';
import { changed, named, whole, withFields, withName, withOversize, without } from './list.ts';
import type { Cell } from './setting.ts';

function withBlock(pattern: Pattern, id: string, change: (block: BlockChoice) => BlockChoice): Pattern {
  return withFields(pattern, { blocks: changed(pattern.blocks, (block) => block.id === id, change) });
}

function recipeOf(pattern: Pattern, block: string): Recipe | undefined {
  const id = pattern.blocks.find((one) => one.id === block)?.recipe;
  return pattern.recipes.find((recipe) => recipe.id === id);
}

export const renameBlock: Edit<{ readonly block: string; readonly name: string }> = {
  id: 'rename-block',
  name: ({ block, name }) => `Call block ${block} “${name.trim()}”`,
  apply: (pattern, { block, name }) =>
    withBlock(pattern, block, (one) => withFields(one, { name: named(name, one.name) })),
};

export const addBlock: Edit<{
  readonly recipe: Recipe;
  readonly others?: readonly Recipe[];
  /** The library's revision of each, where it is known. */
  readonly revisions?: Readonly<Record<string, number>>;
}> = {
  id: 'add-block',
  name: ({ recipe }) => `Add the block ${recipe.name}`,
  apply: (pattern, { recipe, others = [], revisions = {} }) => {
    const letter = freeLetter(pattern);
    if (letter === undefined) return pattern;
    const known = new Set(pattern.recipes.map(({ id }) => id));
    const carried = [recipe, ...others].filter(({ id }) => !known.has(id));
    const fabrics = Object.fromEntries(recipe.roles.map((role) => [role.id, fabricFor(pattern, role)]));
    const block: BlockChoice = {
      id: letter,
      name: recipe.name,
      recipe: recipe.id,
      parameters: {},
      methods: {},
      fabrics,
    };
    const added = { ...pattern, recipes: [...pattern.recipes, ...carried], blocks: [...pattern.blocks, block] };
    return withRevisions(added, carried, revisions);
  },
};

/** A block just like another, under a letter of its own: to be changed, or used at a size of its own. */
export const copyBlock: Edit<{ readonly block: string }> = {
  id: 'copy-block',
  name: ({ block }) => `Copy block ${block}`,
  apply: (pattern, { block }) => {
    const like = pattern.blocks.find(({ id }) => id === block);
    const letter = freeLetter(pattern);
    if (like === undefined || letter === undefined) return pattern;
    return { ...pattern, blocks: [...pattern.blocks, { ...like, id: letter }] };
  },
};

function freeLetter({ blocks }: Pattern): string | undefined {
  const taken = blocks.map(({ id }) => id);
  return [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'].find((one) => !taken.includes(one));
}

/** The fabric of the role's own name, else the first of its value, else the first. */
export function fabricFor(pattern: Pattern, role: { readonly id: string; readonly value: Value }): string {
  const { fabrics } = pattern;
  const fabric =
    fabrics.find(({ id }) => id === role.id) ?? fabrics.find(({ value }) => value === role.value) ?? fabrics[0];
  return fabric?.id ?? role.id;
}

export const removeBlock: Edit<{ readonly block: string; readonly instead: string }> = {
  id: 'remove-block',
  name: ({ block, instead }) => `Remove block ${block} and put ${instead} in its place`,
  apply: (pattern, { block, instead }) => {
    const known = (id: string) => pattern.blocks.some((one) => one.id === id);
    if (block === instead || !known(block) || !known(instead)) return pattern;
    const blocks = pattern.blocks.filter(({ id }) => id !== block);
    const borders = changed(
      pattern.borders,
      ({ pieced }) => pieced !== undefined,
      (border) => withoutInBorder(border, block, instead),
    );
    return { ...pattern, blocks, borders, setting: withoutBlock(pattern.setting, block, instead) };
  },
};

/** A row of letters with another block for one; what cannot be read stays as it is. */
function rowWithout(line: string, block: string, instead: string): string {
  return readRow(line)
    .map((entry) => {
      if (typeof entry === 'string') return entry;
      return writeToken(entry.name === block ? { ...entry, name: instead } : entry);
    })
    .join(' ');
}

function withoutInBorder(border: Border, block: string, instead: string): Border {
  const { pieced } = border;
  if (pieced === undefined) return border;
  const units = rowWithout(pieced.units, block, instead);
  const corner = pieced.corner === undefined ? {} : { corner: rowWithout(pieced.corner, block, instead) };
  return { ...border, pieced: { ...pieced, units, ...corner } };
}

function withoutBlock(setting: Setting, block: string, instead: string): Setting {
  const other = (token: Token): Token => (token.name === block ? { ...token, name: instead } : token);
  const inRow = (line: string) => rowWithout(line, block, instead);
  const motif = setting.motif.map(inRow);
  const single = setting.single.map((one) => {
    const token = readToken(one.block);
    return token === null ? one : { ...one, block: writeToken(other(token)) };
  });
  const all = { ...setting, motif, single };
  return all.kind === 'on-point' && all.between !== undefined ? { ...all, between: all.between.map(inRow) } : all;
}

export const setParameter: Edit<{ readonly block: string; readonly parameter: string; readonly value: number }> = {
  id: 'set-parameter',
  name: ({ block, parameter, value }, pattern) => {
    const name = recipeOf(pattern, block)?.parameters.find(({ id }) => id === parameter)?.name ?? parameter;
    return `Make ${name.toLowerCase()} ${value} in block ${block}`;
  },
  apply: (pattern, { block, parameter, value }) => {
    const known = recipeOf(pattern, block)?.parameters.find(({ id }) => id === parameter);
    if (known === undefined) return pattern;
    const held = whole(value, known.least, known.most);
    return withBlock(pattern, block, (one) => {
      if ((one.parameters[parameter] ?? known.default) === held) return one;
      return withFields(one, { parameters: withName(one.parameters, parameter, held) });
    });
  },
};

export const setPlaces: Edit<{ readonly block: string; readonly places: number }> = {
  id: 'set-places',
  name: ({ block, places }) => `Let block ${block} fill ${whole(places, 1, 12)} places each way`,
  apply: (pattern, { block, places }) => {
    const many = whole(places, 1, 12);
    return withBlock(pattern, block, (one) =>
      many === 1 ? without(one, 'places') : withFields(one, { places: many }),
    );
  },
};

export const setMethod: Edit<{ readonly block: string; readonly of: string; readonly method: string | null }> = {
  id: 'set-method',
  name: ({ block, method }) =>
    `${method === null ? 'Make a unit the house’s way' : 'Make a unit another way'} in block ${block}`,
  apply: (pattern, { block, of, method }) =>
    withBlock(pattern, block, (one) => withFields(one, { methods: withName(one.methods, of, method) })),
};

/** Inches added to what is trimmed, for a kind of unit or one unit of a block; null leaves it to the house. */
export const setOversize: Edit<{ readonly block: string; readonly of: string; readonly inches: number | null }> = {
  id: 'set-oversize',
  name: ({ block, inches }) =>
    `${inches === null ? 'Leave how much is trimmed to the house' : 'Change how much is trimmed'} in block ${block}`,
  apply: (pattern, { block, of, inches }) =>
    withBlock(pattern, block, (one) => withFields(one, { oversize: withOversize(one.oversize, of, inches) })),
};

export const setRoleFabric: Edit<{ readonly block: string; readonly role: string; readonly fabric: string }> = {
  id: 'set-role-fabric',
  name: ({ block, role, fabric }, pattern) => {
    const roleName = recipeOf(pattern, block)?.roles.find(({ id }) => id === role)?.name ?? role;
    const fabricName = pattern.fabrics.find(({ id }) => id === fabric)?.name ?? fabric;
    return `Cut ${roleName.toLowerCase()} of block ${block} from ${fabricName}`;
  },
  apply: (pattern, { block, role, fabric }) => {
    if (!pattern.fabrics.some(({ id }) => id === fabric)) return pattern;
    return withBlock(pattern, block, (one) => {
      if ((one.fabrics[role] ?? role) === fabric) return one;
      return withFields(one, { fabrics: withName(one.fabrics, role, fabric) });
    });
  },
};

export const turnCells: Edit<{ readonly recipe: string; readonly cells: readonly Cell[]; readonly by: Turn }> = {
  id: 'turn-cells',
  name: ({ cells, by }) =>
    `${by.mirrored ? 'Mirror' : 'Turn'} ${cells.length === 1 ? 'a unit' : `${cells.length} units`}`,
  apply: (pattern, { recipe, cells, by }) => {
    const recipes = changed(
      pattern.recipes,
      ({ id }) => id === recipe,
      (one) => (one.body.kind === 'grid' ? withFields(one, { body: turnedCells(one.body, cells, by) }) : one),
    );
    return withFields(pattern, { recipes });
  },
};

function turnedCells(body: GridBody, cells: readonly Cell[], by: Turn): GridBody {
  const layout = body.layout.map((line, row) => {
    const tokens = readRow(line);
    const here = cells.filter((cell) => cell.row === row);
    if (here.length === 0 || tokens.some((entry) => typeof entry === 'string')) return line;
    return writeRow(
      (tokens as readonly Token[]).map((token, column) => {
        if (!here.some((cell) => cell.column === column)) return token;
        return { ...token, turn: afterTurn(token.turn, squareOnly(body, column, row, by)) };
      }),
    );
  });
  return layout.every((line, row) => line === body.layout[row]) ? body : { ...body, layout };
}

/** A cell that is not square stays filled only by half turns, so a quarter turn becomes a half turn there. */
function squareOnly(body: GridBody, column: number, row: number, by: Turn): Turn {
  const square = body.columns[column] === body.rows[row];
  return square || by.quarters % 2 === 0 ? by : { ...by, quarters: 2 };
}
