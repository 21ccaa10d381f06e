import type { Inches } from '../../measure/inches.ts';
import { beside, moved, type Picture, picture, together } from './picture.ts';
import { at, press } from './pieces.ts';
import { type StripCloth, type StripSet, seamsOf, setArrows, setOpened } from './strips.ts';

/** Figures of columns of rectangles, cut from strip sets or sewn one by one, that become a unit. */

/** One column: the set it is a sub-cut of, and whether it is turned end for end. */
export interface Column {
  readonly set: StripSet;
  readonly turned: boolean;
}

/** Columns side by side, pulled apart, each with the pressing of its seams. */
export function columnsApart(columns: readonly Column[], pieces: StripCloth): Picture {
  return beside(pieces.subCut / 4, ...columns.map((column) => pressedColumn(column, pieces)));
}

/** One column with the pressing of its seams. */
export function pressedColumn(column: Column, pieces: StripCloth): Picture {
  const lying = lyingSet(column);
  return together(setOpened(lying, pieces, pieces.subCut), setArrows(lying, pieces, pieces.subCut));
}

/** The set as it lies: end for end its fabrics come the other way round, and what was pressed up is pressed down. */
export function lyingSet({ set, turned }: Column): StripSet {
  if (!turned) return set;
  const pressedUp = [...set.pressedUp].reverse().map((up) => !up);
  return { ...set, roles: [...set.roles].reverse(), pressedUp };
}

/**
 * Columns sewn together, with the pressing of the long seams.
 * @param toLeft whether a long seam, counted from the left, is pressed to the left
 */
export function columnsSewn(
  columns: readonly Column[],
  pieces: StripCloth,
  toLeft: (seam: number) => boolean,
): Picture {
  const { subCut, seam, strip } = pieces;
  const edges = seamsOf(columns.length, subCut, seam);
  const shown = columns.map((column, i) => {
    const [left, right] = [edges[i] as Inches, edges[i + 1] as Inches];
    return moved(setOpened(lyingSet(column), pieces, right - left), at(left, 0));
  });
  const height = seamsOf(columns[0]?.set.roles.length ?? 1, strip, seam).at(-1) as Inches;
  const reach = (subCut - 2 * seam) / 2;
  const arrows = edges
    .slice(1, -1)
    .map((x, i) => press(at(x, height / 2), at(toLeft(i) ? x - 1 : x + 1, height / 2), reach));
  return together(...shown, picture({ arrows }));
}

/** Every single rectangle before it is sewn, in its place. */
export function piecesApart(columns: readonly Column[], { strip, subCut }: StripCloth): Picture {
  const gap = Math.min(strip, subCut) / 6;
  const single = { strip, subCut, seam: 0 };
  const shown = columns.flatMap((column, x) =>
    lyingSet(column).roles.map((role, y) => {
      const one = setOpened({ roles: [role], subCuts: 1, pressedUp: [] }, single, subCut);
      return moved(one, at(x * (subCut + gap), y * (strip + gap)));
    }),
  );
  return together(...shown);
}

/** Rows for columns: the picture with across and down exchanged. */
export function exchanged({ cloth, lines, arrows, numbers }: Picture): Picture {
  const swap = ({ x, y }: { readonly x: number; readonly y: number }) => at(y, x);
  const ends = <T extends Picture['lines'][number] | Picture['arrows'][number]>(one: T): T => ({
    ...one,
    from: swap(one.from),
    to: swap(one.to),
  });
  return {
    cloth: cloth.map((piece) => ({ ...piece, corners: piece.corners.map(swap).reverse() })),
    lines: lines.map(ends),
    arrows: arrows.map(ends),
    numbers: numbers.map((number) => ({ ...number, at: swap(number.at) })),
  };
}
