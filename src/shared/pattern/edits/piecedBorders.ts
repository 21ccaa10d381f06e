import { same } from '../../measure/inches.ts';
import { rulerOn } from '../../measure/ruler.ts';
import type { Recipe } from '../../recipe/schema.ts';
import { readRow, readToken, type Token, writeRow, writeToken } from '../../recipe/token.ts';
import { borderWidths } from '../borderWidths.ts';
import type { Edit } from '../edit.ts';
import type { Border, Pattern, Size } from '../schema.ts';
import { usedBlocks } from '../usedBlocks.ts';
import { addBlock } from './blocks.ts';
import { addBorder } from './borders.ts';
import { changed, freeId, lengthWithin, named, withFields, without } from './list.ts';

const WIDEST = 60;

function nameOf(pattern: Pattern, id: string): string {
  return (pattern.borders.find((border) => border.id === id)?.name ?? id).toLowerCase();
}

/** A row of letters as it is written, if it names blocks that are there; else null. */
function soundRow(pattern: Pattern, text: string): string | null {
  const entries = readRow(text);
  const blocks = new Set(pattern.blocks.map(({ id }) => id));
  const tokens = entries.filter((entry): entry is Token => typeof entry !== 'string' && blocks.has(entry.name));
  return tokens.length === 0 || tokens.length < entries.length || tokens.length > 24 ? null : writeRow(tokens);
}

type Pieced = NonNullable<Border['pieced']>;

export const setBorderPieced: Edit<{
  readonly border: string;
  /** Null: a plain border. */
  readonly units: string | null;
  /** Null: plain squares. */
  readonly corner?: string | null;
  readonly run?: NonNullable<Pieced['run']>;
}> = {
  id: 'set-border-pieced',
  name: ({ border, units }, pattern) =>
    `${units === null ? 'Make a plain border of' : 'Piece'} the ${nameOf(pattern, border)}`,
  apply: (pattern, { border, units, corner, run }) => {
    const row = units === null ? null : soundRow(pattern, units);
    const token = typeof corner === 'string' ? readToken(corner.trim()) : null;
    const known = token !== null && pattern.blocks.some(({ id }) => id === token.name);
    if ((units !== null && row === null) || (typeof corner === 'string' && !known)) return pattern;
    const borders = changed(
      pattern.borders,
      ({ id }) => id === border,
      (one) => {
        if (row === null) return without(one, 'pieced');
        const was: Pieced = one.pieced ?? { units: row };
        const bare = corner === null ? without(was, 'corner') : was;
        const about = run === 'round' ? without(bare, 'run') : bare;
        const pieced = withFields(about, {
          units: row,
          ...(token === null ? {} : { corner: writeToken(token) }),
          ...(run === undefined || run === 'round' ? {} : { run }),
        });
        return withFields(one, { pieced });
      },
    );
    return withFields(pattern, { borders });
  },
};

/** Adds a border of blocks outside all others: a round of a medallion. */
export const addRound: Edit<{
  readonly name: string;
  readonly units: string;
  /** Null: plain squares of the fabric. */
  readonly corner: string | null;
  readonly fabric: string;
  readonly width: number;
}> = {
  id: 'add-round',
  name: ({ name }) => `Add the round “${name.trim()}”`,
  apply: (pattern, { name, units, corner, fabric, width }) => {
    const plain = addBorder.apply(pattern, { name, fabric, width, first: 'sides' });
    const border = plain.borders.at(-1)?.id;
    if (plain === pattern || border === undefined) return pattern;
    const pieced = setBorderPieced.apply(plain, { border, units, corner });
    return pieced === plain ? pattern : pieced;
  },
};

/**
 * Puts plain strips just inside a border, so wide in each size as it takes to make the border close; a size that needs none
 * goes without.
 */
export const addSpacer: Edit<{
  readonly border: string;
  readonly fabric: string;
  /** By the size's id, finished inches. */
  readonly widths: Readonly<Record<string, { readonly sides: number; readonly ends: number }>>;
}> = {
  id: 'add-spacer',
  name: ({ border, widths }, pattern) => {
    const [first] = Object.values(widths);
    return `Put ${first === undefined ? 'strips' : `${rulerOn(pattern.house.step).length(first.sides)} strips`} inside the ${nameOf(pattern, border)}`;
  },
  apply: (pattern, { border, fabric, widths }) => {
    const at = pattern.borders.findIndex(({ id }) => id === border);
    const known = pattern.fabrics.some(({ id }) => id === fabric);
    const sized = pattern.sizes.map((size) => {
      const { sides = 0, ends = 0 } = widths[size.id] ?? {};
      return { size, sides: lengthWithin(sides, 0, WIDEST), ends: lengthWithin(ends, 0, WIDEST) };
    });
    const usual = sized.map(({ sides, ends }) => Math.max(sides ?? 0, ends ?? 0)).find((width) => width > 0);
    const wrong = sized.some(({ sides, ends }) => sides === null || ends === null);
    if (at < 0 || !known || wrong || usual === undefined || pattern.borders.length >= 20) return pattern;
    const name = named(`Inside ${nameOf(pattern, border)}`, 'Spacer');
    const id = freeId(
      name,
      pattern.borders.map((one) => one.id),
    );
    const spacer: Border = { id, name, fabric, width: usual, first: 'sides' };
    const sizes = sized.map(({ size, sides, ends }) => {
      const own = { ...size, borders: { ...size.borders, [id]: sides ?? 0 } };
      return sides === ends ? own : { ...own, borderEnds: { ...size.borderEnds, [id]: ends ?? 0 } };
    });
    const borders = [...pattern.borders.slice(0, at), spacer, ...pattern.borders.slice(at)];
    return { ...pattern, borders, sizes };
  },
};

/**
 * Pieces a border of another block of the library. A block that stood only in this border is taken away with it, so that none
 * is left over that no place of the quilt has.
 */
export const pieceBorderOf: Edit<{
  readonly border: string;
  readonly recipe: Recipe;
  readonly others?: readonly Recipe[];
  readonly revisions?: Readonly<Record<string, number>>;
}> = {
  id: 'piece-border-of',
  name: ({ border, recipe }, pattern) => `Piece the ${nameOf(pattern, border)} of ${recipe.name}`,
  apply: (pattern, { border, ...taken }) => {
    if (!pattern.borders.some(({ id }) => id === border)) return pattern;
    const before = usedBlocks(pattern);
    const added = addBlock.apply(pattern, taken);
    const letter = added.blocks.at(-1)?.id;
    if (added === pattern || letter === undefined) return pattern;
    const pieced = setBorderPieced.apply(added, { border, units: letter, corner: null });
    const after = usedBlocks(pieced);
    const blocks = pieced.blocks.filter(({ id }) => after.has(id) || !before.has(id));
    return { ...pieced, blocks };
  },
};

/**
 * Makes what lies inside a border wider and higher in one size, so that the border closes: by the plain border next inside it,
 * or else by the blocks when that is the same for both. Nothing changes where neither can be.
 */
export const changeInside: Edit<{
  readonly border: string;
  readonly size: string;
  /** Finished inches; below zero, narrower and lower. */
  readonly wider: number;
  readonly higher: number;
}> = {
  id: 'change-inside',
  name: ({ border, size }, pattern) => {
    const name = pattern.sizes.find(({ id }) => id === size)?.name ?? size;
    return `Change what is inside the ${nameOf(pattern, border)} in ${name}`;
  },
  apply: (pattern, { border, size, wider, higher }) => {
    const at = pattern.borders.findIndex(({ id }) => id === border);
    if (at < 0 || !Number.isFinite(wider) || !Number.isFinite(higher)) return pattern;
    const sizes = changed(
      pattern.sizes,
      ({ id }) => id === size,
      (one) => byBorder(pattern, one, at, wider, higher) ?? byBlocks(pattern, one, wider, higher) ?? one,
    );
    return withFields(pattern, { sizes });
  },
};

function byBorder(pattern: Pattern, size: Size, at: number, wider: number, higher: number): Size | null {
  const inside = pattern.borders.slice(0, at).findLast(({ pieced }) => pieced === undefined);
  if (inside === undefined) return null;
  const was = borderWidths(inside, size);
  const [sides, ends] = [was.sides + wider / 2, was.ends + higher / 2];
  if ([sides, ends].some((width) => width < 0 || width > WIDEST)) return null;
  const own = withFields(size, { borders: { ...size.borders, [inside.id]: sides } });
  const { [inside.id]: _was, ...others } = size.borderEnds ?? {};
  const borderEnds = same(sides, ends) ? others : { ...others, [inside.id]: ends };
  return Object.keys(borderEnds).length === 0 ? without(own, 'borderEnds') : { ...own, borderEnds };
}

/** Only where blocks stand side by side, and each grows alike both ways. */
function byBlocks({ setting }: Pattern, size: Size, wider: number, higher: number): Size | null {
  const [each, other] = [wider / size.across, higher / size.down];
  if (setting.kind === 'on-point' || !same(each, other)) return null;
  const block = size.block + each;
  return block < 1 || block > 120 ? null : withFields(size, { block });
}
