import { rulerOn } from '../../measure/ruler.ts';
import type { Value } from '../../recipe/schema.ts';
import type { Edit } from '../edit.ts';
import { type Photograph, photographSchema } from '../photograph.ts';
import type { Bundle, Fabric, Pattern } from '../schema.ts';
import { withBorderFabrics, withSettingFabrics } from '../settingFabrics.ts';
import { changed, freeId, lengthWithin, named, withFields } from './list.ts';

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

/** What a yard of it costs; null for not known. */
export const setFabricPrice: Edit<{ readonly fabric: string; readonly price: number | null }> = {
  id: 'set-fabric-price',
  name: ({ fabric }, pattern) => `Change the price of ${nameOf(pattern, fabric)}`,
  apply: (pattern, { fabric, price }) => withOptional(pattern, fabric, 'price', price === null ? null : asPrice(price)),
};

function asPrice(price: number): number | null {
  return Number.isFinite(price) ? Math.min(100_000, Math.max(0, price)) : null;
}

/** How a fabric's print runs; null for one that looks alike every way. */
export const setFabricDirection: Edit<{
  readonly fabric: string;
  readonly direction: NonNullable<Fabric['direction']> | null;
}> = {
  id: 'set-fabric-direction',
  name: ({ fabric, direction }, pattern) =>
    direction === null
      ? `Let ${nameOf(pattern, fabric)} be turned`
      : `Call ${nameOf(pattern, fabric)} a ${direction} print`,
  apply: (pattern, { fabric, direction }) => withOptional(pattern, fabric, 'direction', direction),
};

/**
 * Shows a fabric by a photograph, and by the colour of the cloth in it wherever it is drawn; null for no photograph.
 */
export const setFabricPhotograph: Edit<{
  readonly fabric: string;
  readonly photograph: Photograph | null;
  readonly colour?: string;
}> = {
  id: 'set-fabric-photograph',
  name: ({ fabric, photograph }, pattern) =>
    photograph === null
      ? `Take the photograph from ${nameOf(pattern, fabric)}`
      : `Show ${nameOf(pattern, fabric)} by a photograph`,
  apply: (pattern, { fabric, photograph, colour }) => {
    if (photograph !== null && !photographSchema.safeParse(photograph).success) return pattern;
    const shown = withOptional(pattern, fabric, 'photograph', photograph);
    return colour !== undefined && isColour(colour) ? withFabric(shown, fabric, { colour }) : shown;
  },
};

/** Whether it is bought in sheets, and in which; null for by the yard. */
export const setFabricSheet: Edit<{ readonly fabric: string; readonly sheet: NonNullable<Fabric['sheet']> | null }> = {
  id: 'set-fabric-sheet',
  name: ({ fabric, sheet }, pattern) =>
    `Buy ${nameOf(pattern, fabric)} ${sheet === null ? `by the ${rulerOn(pattern.house.step).clothUnit}` : 'in sheets'}`,
  apply: (pattern, { fabric, sheet }) => withOptional(pattern, fabric, 'sheet', sheet === null ? null : asSheet(sheet)),
};

function asSheet({ name, width, height }: NonNullable<Fabric['sheet']>): NonNullable<Fabric['sheet']> {
  const side = (value: number, usual: number) => lengthWithin(value, 1, 120) ?? usual;
  return { name: named(name, 'fat quarter'), width: side(width, 18), height: side(height, 21) };
}

/** The many fabrics a scrappy one is made up of; fewer than two make it one cloth again. */
export const setFabricScraps: Edit<{ readonly fabric: string; readonly scraps: NonNullable<Fabric['scraps']> }> = {
  id: 'set-fabric-scraps',
  name: ({ fabric }, pattern) => `Change the scraps of ${nameOf(pattern, fabric)}`,
  apply: (pattern, { fabric, scraps }) => {
    const sound = scraps.filter(({ colour }) => isColour(colour)).slice(0, 60);
    const made = sound.map(({ name, colour }) => ({ name: named(name, 'Scrap'), colour }));
    return withOptional(pattern, fabric, 'scraps', made.length < 2 ? null : made);
  },
};

/** Spreads a scrappy fabric's scraps another way; the same number spreads them the same way. */
export const setFabricSpread: Edit<{ readonly fabric: string; readonly spread: number }> = {
  id: 'set-fabric-spread',
  name: ({ fabric }, pattern) => `Spread the scraps of ${nameOf(pattern, fabric)} another way`,
  apply: (pattern, { fabric, spread }) => {
    const sound = Number.isInteger(spread) && spread >= 0 && spread <= 1_000_000;
    return sound ? withOptional(pattern, fabric, 'spread', spread === 0 ? null : spread) : pattern;
  },
};

/** The fabric with an entry set, or without it when it is null. */
function withOptional<Name extends 'direction' | 'photograph' | 'price' | 'scraps' | 'sheet' | 'spread'>(
  pattern: Pattern,
  id: string,
  name: Name,
  value: NonNullable<Fabric[Name]> | null,
): Pattern {
  const before = pattern.fabrics.find((fabric) => fabric.id === id);
  if (before === undefined || JSON.stringify(before[name] ?? null) === JSON.stringify(value)) return pattern;
  const fabrics = pattern.fabrics.map((fabric) => {
    if (fabric !== before) return fabric;
    const { [name]: _gone, ...rest } = fabric;
    return (value === null ? rest : { ...rest, [name]: value }) as Fabric;
  });
  return { ...pattern, fabrics };
}

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
      ...(pattern.bundle === undefined ? {} : { bundle: withoutFabric(pattern.bundle, fabric, instead) }),
    };
  },
};

/** A bundle that speaks of the other fabric where it spoke of this one. */
function withoutFabric(bundle: Bundle, fabric: string, instead: string): Bundle {
  const other = (ids: readonly string[]) => [...new Set(ids.map((id) => (id === fabric ? instead : id)))];
  const fabrics = bundle.fabrics === undefined ? {} : { fabrics: other(bundle.fabrics) };
  return { ...bundle, match: other(bundle.match), ...fabrics };
}

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
