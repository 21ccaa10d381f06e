import { rulerOn } from '../../measure/ruler.ts';
import type { Edit } from '../edit.ts';
import type { Pattern, Size } from '../schema.ts';
import { changed, freeId, lengthWithin, movedTo, named, whole, withFields } from './list.ts';

const MOST_ACROSS = 200;
const SMALLEST_BLOCK = 1 / 2;
const LARGEST_BLOCK = 120;

function nameOf(pattern: Pattern, id: string): string {
  return pattern.sizes.find((size) => size.id === id)?.name ?? id;
}

function withSize(pattern: Pattern, id: string, fields: Partial<Size>): Pattern {
  const sizes = changed(
    pattern.sizes,
    (size) => size.id === id,
    (size) => withFields(size, fields),
  );
  return withFields(pattern, { sizes });
}

/** A size's name that no other size has: findings and charts know a size by its name. */
function freeName(pattern: Pattern, name: string, own: string): string {
  const taken = new Set(pattern.sizes.filter(({ id }) => id !== own).map((size) => size.name));
  if (!taken.has(name)) return name;
  for (let n = 2; ; n += 1) if (!taken.has(`${name} ${n}`)) return `${name} ${n}`;
}

export const addSize: Edit<{
  readonly name: string;
  readonly across: number;
  readonly down: number;
  readonly block: number;
}> = {
  id: 'add-size',
  name: ({ name }) => `Add the size ${name.trim()}`,
  apply: (pattern, { name, across, down, block }) => {
    const finished = lengthWithin(block, SMALLEST_BLOCK, LARGEST_BLOCK);
    if (finished === null || pattern.sizes.length >= 12) return pattern;
    const id = freeId(
      name,
      pattern.sizes.map((size) => size.id),
    );
    const size: Size = {
      id,
      name: freeName(pattern, named(name, 'New size'), id),
      across: whole(across, 1, MOST_ACROSS),
      down: whole(down, 1, MOST_ACROSS),
      block: finished,
      borders: {},
    };
    return { ...pattern, sizes: [...pattern.sizes, size] };
  },
};

/** A size as it was found for a target: with border widths of its own. */
export const addFoundSize: Edit<{
  readonly name: string;
  readonly across: number;
  readonly down: number;
  readonly block: number;
  readonly borders: Readonly<Record<string, number>>;
}> = {
  id: 'add-found-size',
  name: ({ name }) => `Add the size ${name.trim()}`,
  apply: (pattern, { borders, ...size }) => {
    const after = addSize.apply(pattern, size);
    if (after === pattern) return pattern;
    const known = new Set(pattern.borders.map(({ id }) => id));
    const own = Object.entries(borders).flatMap(([id, width]) => {
      const finished = known.has(id) ? lengthWithin(width, 0, 60) : null;
      return finished === null ? [] : [[id, finished] as const];
    });
    const last = after.sizes.length - 1;
    const sizes = after.sizes.map((one, i) => (i === last ? { ...one, borders: Object.fromEntries(own) } : one));
    return { ...after, sizes };
  },
};

export const renameSize: Edit<{ readonly size: string; readonly name: string }> = {
  id: 'rename-size',
  name: ({ size, name }, pattern) => `Call the size ${nameOf(pattern, size)} “${name.trim()}”`,
  apply: (pattern, { size, name }) =>
    withSize(pattern, size, { name: freeName(pattern, named(name, nameOf(pattern, size)), size) }),
};

export const setSizeBlocks: Edit<{ readonly size: string; readonly across?: number; readonly down?: number }> = {
  id: 'set-size-blocks',
  name: ({ size, across, down }, pattern) => {
    const said = [across === undefined ? [] : [`${across} across`], down === undefined ? [] : [`${down} down`]].flat();
    return `Make ${nameOf(pattern, size)} ${said.join(', ')}`;
  },
  apply: (pattern, { size, across, down }) => {
    const fields: Partial<Size> = {};
    if (across !== undefined) fields.across = whole(across, 1, MOST_ACROSS);
    if (down !== undefined) fields.down = whole(down, 1, MOST_ACROSS);
    return withSize(pattern, size, fields);
  },
};

export const setSizeBlock: Edit<{ readonly size: string; readonly block: number }> = {
  id: 'set-size-block',
  name: ({ size, block }, pattern) =>
    `Make the blocks of ${nameOf(pattern, size)} ${rulerOn(pattern.house.step).length(block)}`,
  apply: (pattern, { size, block }) => {
    const finished = lengthWithin(block, SMALLEST_BLOCK, LARGEST_BLOCK);
    return finished === null ? pattern : withSize(pattern, size, { block: finished });
  },
};

export const moveSize: Edit<{ readonly size: string; readonly to: number }> = {
  id: 'move-size',
  name: ({ size }, pattern) => `Move the size ${nameOf(pattern, size)}`,
  apply: (pattern, { size, to }) => {
    const from = pattern.sizes.findIndex(({ id }) => id === size);
    return withFields(pattern, { sizes: movedTo(pattern.sizes, from, to) });
  },
};

export const removeSize: Edit<{ readonly size: string }> = {
  id: 'remove-size',
  name: ({ size }, pattern) => `Remove the size ${nameOf(pattern, size)}`,
  apply: (pattern, { size }) => {
    if (pattern.sizes.length === 1 || !pattern.sizes.some(({ id }) => id === size)) return pattern;
    const single = pattern.setting.single.filter((one) => one.size !== size);
    const setting = single.length === pattern.setting.single.length ? pattern.setting : { ...pattern.setting, single };
    return { ...pattern, sizes: pattern.sizes.filter(({ id }) => id !== size), setting };
  },
};
