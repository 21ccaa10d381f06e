import type { TracedSize } from '../../measure/traced.ts';
import type { Scale } from '../method.ts';
import { type Board, boardPatch } from './boardSize.ts';
import { type Column, exchanged } from './columns.ts';
import type { Picture } from './picture.ts';
import { type StripCloth, type StripSet, stripCloth, towardsWords } from './strips.ts';

/**
 * A unit of equal rectangles as columns that are sub-cuts of strip sets, and how its seams are pressed so that they nest:
 * neighbouring columns to opposite sides. The pressing stage counts on what is said here (`../boardSeams.ts`).
 */
export interface BoardWork {
  readonly sets: readonly StripSet[];
  readonly columns: readonly Column[];
  /** One rectangle: as wide as a sub-cut, as high as a strip. */
  readonly patch: TracedSize;
  readonly pieces: StripCloth;
  /** Whether a long seam, counted from the left, is pressed to the left. */
  readonly toLeft: (seam: number) => boolean;
  /** Which way the seams of the sets are pressed. */
  readonly pressing: string;
  /** Everything is said in columns; what is really sewn in rows is drawn with across and down exchanged. */
  readonly inRows: boolean;
  readonly shown: (one: Picture) => Picture;
}

const asItIs = (one: Picture): Picture => one;

export function boardWork(unit: Board, scale: Scale): BoardWork {
  const patch = boardPatch(unit, scale);
  const common = { patch, pieces: stripCloth(patch, scale), inRows: false, shown: asItIs };
  switch (unit.kind) {
    case 'nine-patch':
      return { ...common, ...ninePatch(unit.roles, scale) };
    case 'checkerboard':
      return checkerboard(unit, scale);
    case 'rails': {
      const set = { roles: unit.roles, subCuts: 1, pressedUp: unit.roles.slice(1).map(() => false) };
      return { ...common, ...oneSet(set, [false]), toLeft: () => false, pressing: 'all one way, as the arrows show' };
    }
  }
}

function oneSet(set: StripSet, turned: readonly boolean[]): Pick<BoardWork, 'sets' | 'columns'> {
  return { sets: [set], columns: turned.map((is) => ({ set, turned: is })) };
}

type Parts = Pick<BoardWork, 'sets' | 'columns' | 'toLeft' | 'pressing'>;

/** The outer columns are pressed to their corners, the middle one to its middle: where they meet, seams nest. */
function ninePatch([corner, side, middle]: readonly [string, string, string], scale: Scale): Parts {
  const outer: StripSet = { roles: [corner, side, corner], subCuts: 2, pressedUp: [true, false] };
  const inner: StripSet = { roles: [side, middle, side], subCuts: 1, pressedUp: [false, true] };
  const column = (set: StripSet) => ({ set, turned: false });
  return {
    sets: [outer, inner],
    columns: [column(outer), column(inner), column(outer)],
    toLeft: (seam) => seam === 0,
    pressing:
      corner === middle
        ? towardsWords(corner, side, scale)
        : 'of the first set away from its middle strip, and of the second set towards it',
  };
}

type Checkerboard = Extract<Board, { kind: 'checkerboard' }>;

/** All seams of the sets are pressed to the fabric of the top left square, so that they nest wherever they meet. */
function checkerboard(unit: Checkerboard, scale: Scale): BoardWork {
  if (unit.rows % 2 === 1 && unit.columns % 2 === 0) {
    const { width, height, columns, rows } = unit;
    const turned = { ...unit, width: height, height: width, columns: rows, rows: columns };
    return { ...checkerboard(turned, scale), inRows: true, shown: exchanged };
  }
  const { columns, rows, roles } = unit;
  const patch = boardPatch(unit, scale);
  const set = (first: 0 | 1, subCuts: number): StripSet => ({
    roles: Array.from({ length: rows }, (_, row) => roles[((first + row) % 2) as 0 | 1]),
    subCuts,
    pressedUp: Array.from({ length: rows - 1 }, (_, row) => (first + row) % 2 === 0),
  });
  return {
    ...(rows % 2 === 0 ? alternating(set(0, columns), columns) : inTwos(set, columns)),
    patch,
    pieces: stripCloth(patch, scale),
    toLeft: () => false,
    pressing: towardsWords(roles[0], roles[1], scale),
    inRows: false,
    shown: asItIs,
  };
}

/** With an even number of rows every other column is the same one turned end for end. */
function alternating(set: StripSet, columns: number): Pick<BoardWork, 'sets' | 'columns'> {
  return oneSet(
    set,
    Array.from({ length: columns }, (_, column) => column % 2 === 1),
  );
}

function inTwos(
  set: (first: 0 | 1, subCuts: number) => StripSet,
  columns: number,
): Pick<BoardWork, 'sets' | 'columns'> {
  const sets = [set(0, Math.ceil(columns / 2)), set(1, Math.floor(columns / 2))] as const;
  const all = Array.from({ length: columns }, (_, column) => ({
    set: sets[(column % 2) as 0 | 1],
    turned: false,
  }));
  return { sets, columns: all };
}
