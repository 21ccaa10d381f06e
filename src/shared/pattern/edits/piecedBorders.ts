import { inchesText } from '../../measure/fraction.ts';
import { readRow, readToken, type Token, writeRow, writeToken } from '../../recipe/token.ts';
import type { Edit } from '../edit.ts';
import type { Border, Pattern } from '../schema.ts';
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
    return `Put ${first === undefined ? 'strips' : `${inchesText(first.sides)} strips`} inside the ${nameOf(pattern, border)}`;
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
