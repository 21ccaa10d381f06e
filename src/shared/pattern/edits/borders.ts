import { rulerOn } from '../../measure/ruler.ts';
import type { Edit } from '../edit.ts';
import type { Border, Pattern, Size } from '../schema.ts';
import { changed, freeId, lengthWithin, movedTo, named, withFields, withName, without } from './list.ts';

const THINNEST = 1 / 16;
const WIDEST = 60;

function nameOf(pattern: Pattern, id: string): string {
  return (pattern.borders.find((border) => border.id === id)?.name ?? id).toLowerCase();
}

function withEachBorder(pattern: Pattern, id: string, change: (border: Border) => Border): Pattern {
  return withFields(pattern, { borders: changed(pattern.borders, (border) => border.id === id, change) });
}

function withBorder(pattern: Pattern, id: string, fields: Partial<Border>): Pattern {
  return withEachBorder(pattern, id, (border) => withFields(border, fields));
}

export const addBorder: Edit<{
  readonly name: string;
  readonly fabric: string;
  readonly width: number;
  readonly first: Border['first'];
}> = {
  id: 'add-border',
  name: ({ name }) => `Add the border “${name.trim()}”`,
  apply: (pattern, { name, fabric, width, first }) => {
    const finished = lengthWithin(width, THINNEST, WIDEST);
    if (finished === null || pattern.borders.length >= 20) return pattern;
    const id = freeId(
      name,
      pattern.borders.map((border) => border.id),
    );
    return {
      ...pattern,
      borders: [...pattern.borders, { id, name: named(name, 'Border'), fabric, width: finished, first }],
    };
  },
};

export const removeBorder: Edit<{ readonly border: string }> = {
  id: 'remove-border',
  name: ({ border }, pattern) => `Remove the ${nameOf(pattern, border)}`,
  apply: (pattern, { border }) => {
    if (!pattern.borders.some(({ id }) => id === border)) return pattern;
    const borders = pattern.borders.filter(({ id }) => id !== border);
    const sizes = pattern.sizes.map((size) => {
      const own = withFields(size, { borders: withName<number>(size.borders, border, null) });
      return withEnds(own, border, null);
    });
    return { ...pattern, borders, sizes };
  },
};

export const renameBorder: Edit<{ readonly border: string; readonly name: string }> = {
  id: 'rename-border',
  name: ({ border, name }, pattern) => `Call the ${nameOf(pattern, border)} “${name.trim()}”`,
  apply: (pattern, { border, name }) => {
    const was = pattern.borders.find(({ id }) => id === border)?.name ?? border;
    return withBorder(pattern, border, { name: named(name, was) });
  },
};

export const setBorderWidth: Edit<{ readonly border: string; readonly width: number }> = {
  id: 'set-border-width',
  name: ({ border, width }, pattern) =>
    `Make the ${nameOf(pattern, border)} ${rulerOn(pattern.house.step).length(width)}`,
  apply: (pattern, { border, width }) => {
    const finished = lengthWithin(width, THINNEST, WIDEST);
    return finished === null ? pattern : withBorder(pattern, border, { width: finished });
  },
};

export const setBorderWidthIn: Edit<{ readonly border: string; readonly size: string; readonly width: number | null }> =
  {
    id: 'set-border-width-in',
    name: ({ border, size, width }, pattern) => {
      const sizeName = pattern.sizes.find(({ id }) => id === size)?.name ?? size;
      const as = width === null ? 'as in the other sizes' : rulerOn(pattern.house.step).length(width);
      return `Make the ${nameOf(pattern, border)} ${as} in ${sizeName}`;
    },
    apply: (pattern, { border, size, width }) => {
      const finished = width === null ? null : lengthWithin(width, 0, WIDEST);
      if ((width !== null && finished === null) || !pattern.borders.some(({ id }) => id === border)) return pattern;
      const sizes = changed(
        pattern.sizes,
        ({ id }) => id === size,
        (one) => withFields(one, { borders: withName(one.borders, border, finished) }),
      );
      return withFields(pattern, { sizes });
    },
  };

/** The size with another width for a border's top and bottom; null: none of its own. */
function withEnds(size: Size, border: string, ends: number | null): Size {
  const all = withName<number>(size.borderEnds ?? {}, border, ends);
  if (Object.keys(all).length === 0) return without(size, 'borderEnds');
  return withFields(size, { borderEnds: all });
}

export const setBorderEnds: Edit<{ readonly border: string; readonly ends: number | null }> = {
  id: 'set-border-ends',
  name: ({ border, ends }, pattern) =>
    `Make the ${nameOf(pattern, border)} ${ends === null ? 'as wide all round' : `${rulerOn(pattern.house.step).length(ends)} at the top and bottom`}`,
  apply: (pattern, { border, ends }) => {
    const finished = ends === null ? null : lengthWithin(ends, THINNEST, WIDEST);
    if (ends !== null && finished === null) return pattern;
    return withEachBorder(pattern, border, (one) =>
      finished === null ? without(one, 'ends') : withFields(one, { ends: finished }),
    );
  },
};

export const setBorderEndsIn: Edit<{ readonly border: string; readonly size: string; readonly ends: number | null }> = {
  id: 'set-border-ends-in',
  name: ({ border, size, ends }, pattern) => {
    const sizeName = pattern.sizes.find(({ id }) => id === size)?.name ?? size;
    const as = ends === null ? 'as its sides are' : rulerOn(pattern.house.step).length(ends);
    return `Make the top and bottom of the ${nameOf(pattern, border)} ${as} in ${sizeName}`;
  },
  apply: (pattern, { border, size, ends }) => {
    const finished = ends === null ? null : lengthWithin(ends, 0, WIDEST);
    if ((ends !== null && finished === null) || !pattern.borders.some(({ id }) => id === border)) return pattern;
    const sizes = changed(
      pattern.sizes,
      ({ id }) => id === size,
      (one) => withEnds(one, border, finished),
    );
    return withFields(pattern, { sizes });
  },
};

export const setBorderFirst: Edit<{ readonly border: string; readonly first: Border['first'] }> = {
  id: 'set-border-first',
  name: ({ border, first }, pattern) =>
    `Sew the ${first === 'sides' ? 'sides' : 'top and bottom'} of the ${nameOf(pattern, border)} first`,
  apply: (pattern, { border, first }) => withBorder(pattern, border, { first }),
};

type Corners = NonNullable<Border['corners']>;

const CORNER_WORDS: Readonly<Record<Corners, string>> = {
  butted: 'Butt the corners of',
  cornerstones: 'Put squares into the corners of',
  mitred: 'Mitre the corners of',
};

export const setBorderCorners: Edit<{
  readonly border: string;
  readonly corners: Corners;
  readonly cornerstones?: string;
}> = {
  id: 'set-border-corners',
  name: ({ border, corners }, pattern) => `${CORNER_WORDS[corners]} the ${nameOf(pattern, border)}`,
  apply: (pattern, { border, corners, cornerstones }) => {
    const known = pattern.fabrics.some(({ id }) => id === cornerstones);
    return withEachBorder(pattern, border, (one) => {
      const as = corners === 'butted' ? without(one, 'corners') : withFields(one, { corners });
      if (corners !== 'cornerstones') return without(as, 'cornerstones');
      return known && cornerstones !== undefined ? withFields(as, { cornerstones }) : as;
    });
  },
};

export const setBorderCut: Edit<{ readonly border: string; readonly way: 'straight' | 'diagonal' | 'lengthwise' }> = {
  id: 'set-border-cut',
  name: ({ border, way }, pattern) => {
    const said = way === 'lengthwise' ? 'Cut along the cloth:' : `Join with ${way} seams:`;
    return `${said} ${nameOf(pattern, border)}`;
  },
  apply: (pattern, { border, way }) =>
    withEachBorder(pattern, border, (one) => {
      const across = way === 'lengthwise' ? withFields(one, { lengthwise: true }) : without(one, 'lengthwise');
      return way === 'diagonal' ? withFields(across, { joins: way }) : without(across, 'joins');
    }),
};

export const setBorderFabric: Edit<{ readonly border: string; readonly fabric: string }> = {
  id: 'set-border-fabric',
  name: ({ border }, pattern) => `Change the fabric of the ${nameOf(pattern, border)}`,
  apply: (pattern, { border, fabric }) => withBorder(pattern, border, { fabric }),
};

export const moveBorder: Edit<{ readonly border: string; readonly to: number }> = {
  id: 'move-border',
  name: ({ border }, pattern) => `Move the ${nameOf(pattern, border)}`,
  apply: (pattern, { border, to }) => {
    const from = pattern.borders.findIndex(({ id }) => id === border);
    return withFields(pattern, { borders: movedTo(pattern.borders, from, to) });
  },
};
