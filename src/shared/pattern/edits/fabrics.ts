import type { Value } from '../../recipe/schema.ts';
import type { Edit } from '../edit.ts';
import type { Fabric, Pattern } from '../schema.ts';
import { withBorderFabrics, withSettingFabrics } from '../settingFabrics.ts';
import { changed, freeId, named, withFields } from './list.ts';

function withFabric(pattern: Pattern, id: string, fields: Partial<Fabric>): Pattern {
  const fabrics = changed(
    pattern.fabrics,
    (fabric) => fabric.id === id,
    (fabric) => withFields(fabric, fields),
  );
  return withFields(pattern, { fabrics });
}

function nameOf(pattern: Pattern, id: string): string {
  return pattern.fabrics.find((fabric) => fabric.id === id)?.name ?? id;
}

export const addFabric: Edit<{ readonly name: string; readonly value: Value; readonly colour: string }> = {
  id: 'add-fabric',
  name: ({ name }) => `Add the fabric “${name.trim()}”`,
  apply: (pattern, { name, value, colour }) => {
    if (pattern.fabrics.length >= 60 || !isColour(colour)) return pattern;
    const id = freeId(
      name,
      pattern.fabrics.map((fabric) => fabric.id),
    );
    return { ...pattern, fabrics: [...pattern.fabrics, { id, name: named(name, 'New fabric'), value, colour }] };
  },
};

function isColour(text: string): boolean {
  return /^#[0-9a-f]{6}$/i.test(text);
}

export const renameFabric: Edit<{ readonly fabric: string; readonly name: string }> = {
  id: 'rename-fabric',
  name: ({ fabric, name }, pattern) => `Call ${nameOf(pattern, fabric)} “${name.trim()}”`,
  apply: (pattern, { fabric, name }) => withFabric(pattern, fabric, { name: named(name, nameOf(pattern, fabric)) }),
};

export const setFabricColour: Edit<{ readonly fabric: string; readonly colour: string }> = {
  id: 'set-fabric-colour',
  name: ({ fabric }, pattern) => `Change the colour of ${nameOf(pattern, fabric)}`,
  apply: (pattern, { fabric, colour }) => (isColour(colour) ? withFabric(pattern, fabric, { colour }) : pattern),
};

export const setFabricValue: Edit<{ readonly fabric: string; readonly value: Value }> = {
  id: 'set-fabric-value',
  name: ({ fabric, value }, pattern) => `Make ${nameOf(pattern, fabric)} ${value}`,
  apply: (pattern, { fabric, value }) => withFabric(pattern, fabric, { value }),
};

export const removeFabric: Edit<{ readonly fabric: string; readonly instead: string }> = {
  id: 'remove-fabric',
  name: ({ fabric }, pattern) => `Remove the fabric ${nameOf(pattern, fabric)}`,
  apply: (pattern, { fabric, instead }) => {
    const known = (id: string) => pattern.fabrics.some((one) => one.id === id);
    if (fabric === instead || !known(fabric) || !known(instead)) return pattern;
    const other = (id: string) => (id === fabric ? instead : id);
    return {
      ...pattern,
      fabrics: pattern.fabrics.filter(({ id }) => id !== fabric),
      blocks: pattern.blocks.map((block) => ({
        ...block,
        fabrics: withRoles(pattern, block.recipe, block.fabrics, other),
      })),
      setting: withSettingFabrics(pattern.setting, other),
      borders: pattern.borders.map((border) => withBorderFabrics(border, other)),
      binding: { ...pattern.binding, fabric: other(pattern.binding.fabric) },
      backing: { ...pattern.backing, fabric: other(pattern.backing.fabric) },
    };
  },
};

/** A role without a fabric of its own takes the fabric of its name; if that one goes, the role needs an entry. */
function withRoles(
  pattern: Pattern,
  recipe: string,
  fabrics: Readonly<Record<string, string>>,
  other: (id: string) => string,
): Record<string, string> {
  const roles = pattern.recipes.find(({ id }) => id === recipe)?.roles.map(({ id }) => id) ?? [];
  const chosen = Object.entries(fabrics).map(([role, id]) => [role, other(id)] as const);
  const byName = roles.filter((role) => fabrics[role] === undefined && other(role) !== role);
  return Object.fromEntries([...chosen, ...byName.map((role) => [role, other(role)] as const)]);
}
