import { withRoles } from '../../recipe/cellRoles.ts';
import type { Body, Cell, Recipe, Value } from '../../recipe/schema.ts';
import type { Edit } from '../edit.ts';
import { heldBy } from '../recipes.ts';
import type { Pattern } from '../schema.ts';
import { fabricFor } from './blocks.ts';
import { type OfRecipe, recipeName, roleName, withRecipe } from './drawn.ts';
import { changed, freeId, named, withFields } from './list.ts';

/** Most fabric roles a recipe may have. */
const MOST_ROLES = 40;

/** Adds a fabric role; every block of the recipe gets a fabric of its value for it. */
export const addRole: Edit<OfRecipe & { readonly name: string; readonly value: Value }> = {
  id: 'add-role',
  name: ({ recipe, name }, pattern) => `Add the role “${name.trim()}” to ${recipeName(pattern, recipe)}`,
  apply: (pattern, { recipe: id, name, value }) => {
    const recipe = pattern.recipes.find((one) => one.id === id);
    if (recipe === undefined || recipe.roles.length >= MOST_ROLES) return pattern;
    const role = { id: freeId(named(name, 'New role'), taken(recipe)), name: named(name, 'New role'), value };
    const next = withRecipe(pattern, id, (one) => ({ ...one, roles: [...one.roles, role] }));
    const blocks = changed(
      next.blocks,
      (block) => block.recipe === id,
      (block) => ({ ...block, fabrics: { ...block.fabrics, [role.id]: fabricFor(pattern, role) } }),
    );
    return withFields(
      mapHolders(next, id, (roles, holder) => heldRole(roles, role.id, holder)),
      { blocks },
    );
  },
};

function taken(recipe: Recipe): readonly string[] {
  return recipe.roles.map(({ id }) => id);
}

/** A recipe that holds this one takes its first role for the new one, unless it has one of that name. */
function heldRole(
  roles: Readonly<Record<string, string>>,
  role: string,
  holder: Recipe,
): Readonly<Record<string, string>> {
  const own = holder.roles.some(({ id }) => id === role);
  return own ? roles : { ...roles, [role]: (holder.roles[0] as Recipe['roles'][number]).id };
}

export const renameRole: Edit<OfRecipe & { readonly role: string; readonly name: string }> = {
  id: 'rename-role',
  name: ({ recipe, role, name }, pattern) => `Call ${roleName(pattern, recipe, role)} “${name.trim()}”`,
  apply: (pattern, { recipe, role, name }) =>
    withRole(pattern, recipe, role, (one) => withFields(one, { name: named(name, one.name) })),
};

export const setRoleValue: Edit<OfRecipe & { readonly role: string; readonly value: Value }> = {
  id: 'set-role-value',
  name: ({ recipe, role, value }, pattern) => `Make ${roleName(pattern, recipe, role)} ${value}`,
  apply: (pattern, { recipe, role, value }) => withRole(pattern, recipe, role, (one) => withFields(one, { value })),
};

function withRole(
  pattern: Pattern,
  recipe: string,
  role: string,
  change: (role: Recipe['roles'][number]) => Recipe['roles'][number],
): Pattern {
  return withRecipe(pattern, recipe, (one) =>
    withFields(one, { roles: changed(one.roles, ({ id }) => id === role, change) }),
  );
}

/** Takes a role away; what it coloured takes another. The last one stays. */
export const removeRole: Edit<OfRecipe & { readonly role: string; readonly instead: string }> = {
  id: 'remove-role',
  name: ({ recipe, role, instead }, pattern) =>
    `Remove the role ${roleName(pattern, recipe, role)} and use ${roleName(pattern, recipe, instead)}`,
  apply: (pattern, { recipe: id, role, instead }) => {
    const recipe = pattern.recipes.find((one) => one.id === id);
    const known = recipe === undefined ? [] : taken(recipe);
    if (role === instead || !known.includes(role) || !known.includes(instead)) return pattern;
    const other = (one: string) => (one === role ? instead : one);
    const next = withRecipe(pattern, id, (one) => ({
      ...one,
      roles: one.roles.filter((entry) => entry.id !== role),
      body: bodyIn(one.body, other),
    }));
    const blocks = changed(
      next.blocks,
      (block) => block.recipe === id && block.fabrics[role] !== undefined,
      (block) => ({ ...block, fabrics: without(block.fabrics, role) }),
    );
    return withFields(
      mapHolders(next, id, (roles) => without(roles, role)),
      { blocks },
    );
  },
};

function without<T>(record: Readonly<Record<string, T>>, name: string): Record<string, T> {
  const { [name]: _gone, ...rest } = record;
  return rest;
}

type Rename = (role: string) => string;

function bodyIn(body: Body, other: Rename): Body {
  if (body.kind === 'grid')
    return {
      ...body,
      key: Object.fromEntries(Object.entries(body.key).map(([k, cell]) => [k, withRoles(cell, other)])),
    };
  if (body.kind === 'rounds') {
    const [a, b, c, d] = body.logs;
    return { ...body, core: withRoles(body.core, other), logs: [other(a), other(b), other(c), other(d)] };
  }
  return {
    ...body,
    ...(body.role === undefined ? {} : { role: other(body.role) }),
    ...(body.patches && { patches: body.patches.map((patch) => ({ ...patch, role: other(patch.role) })) }),
    ...(body.splits && { splits: body.splits.map((split) => ({ ...split, role: other(split.role) })) }),
  };
}

type Roles = Readonly<Record<string, string>>;

/** Changes the roles that recipes which hold this one give it. */
function mapHolders(pattern: Pattern, id: string, change: (roles: Roles, holder: Recipe) => Roles): Pattern {
  const recipes = changed(
    pattern.recipes,
    (recipe) => heldBy(recipe).includes(id),
    (recipe) => ({ ...recipe, body: heldIn(recipe.body, id, (roles) => change(roles, recipe)) }),
  );
  return withFields(pattern, { recipes });
}

function heldIn(body: Body, id: string, change: (roles: Roles) => Roles): Body {
  const cell = (one: Cell): Cell => {
    if (!('recipe' in one) || one.recipe !== id) return one;
    const roles = change(one.roles ?? {});
    const { roles: _was, ...rest } = one;
    return Object.keys(roles).length === 0 ? rest : { ...rest, roles };
  };
  if (body.kind === 'drawing') return body;
  if (body.kind === 'rounds') return { ...body, core: cell(body.core) };
  return { ...body, key: Object.fromEntries(Object.entries(body.key).map(([name, one]) => [name, cell(one)])) };
}
