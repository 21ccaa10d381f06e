import { fractionOf } from '../../measure/fraction.ts';
import type { Inches } from '../../measure/inches.ts';
import type { Traced, TracedSize } from '../../measure/traced.ts';
import type { Cut, Scale } from '../method.ts';
import { darker } from './darker.ts';
import { type Picture, picture, together } from './picture.ts';
import { at, cloth, faceToFace, line, press, rectangle } from './pieces.ts';

/** A strip set: strips of equal width sewn along their long sides, from the top down, then crosscut. */
export interface StripSet {
  readonly roles: readonly string[];
  /** Sub-cuts one unit takes. */
  readonly subCuts: number;
  /** For each seam from the top down, whether it is pressed up. */
  readonly pressedUp: readonly boolean[];
}

/** Sizes as cut, inches: the width of a strip and how far apart it is crosscut. */
export interface StripCloth {
  readonly strip: Inches;
  readonly subCut: Inches;
  readonly seam: Inches;
}

export function stripCloth({ width, height }: TracedSize, { seam }: Scale): StripCloth {
  return { strip: height.value, subCut: width.value, seam };
}

/** The strips of one set as lines of the cut list: each sub-cut carries one piece of every strip. */
export function stripCuts({ roles, subCuts }: StripSet, { width, height }: TracedSize): readonly Cut[] {
  const stripSet = setName(roles, height);
  return roles.map((role) => ({
    role,
    width: height,
    height: width,
    count: subCuts,
    patches: 1,
    use: 'strip',
    stripSet,
  }));
}

/** The roles side by side and the width of the strips: sets of one name are the same set. */
export function setName(roles: readonly string[], strip: Traced): string {
  return roles.map((role) => `${role} ${fractionOf(strip.value)}″`).join(' + ');
}

/** The first two strips of a set right sides together, sewn along one long side. */
export function stripsSewn({ roles }: StripSet, { strip, subCut, seam }: StripCloth): Picture {
  const [first, second] = roles as readonly [string, string];
  const length = LENGTH * subCut;
  const seamLine = line('sewn', at(0, strip - seam), at(length, strip - seam));
  return together(faceToFace(second, first, length, strip), picture({ lines: [seamLine] }));
}

/** Sub-cuts that are drawn of a set: enough to see how it is cut. */
const LENGTH = 4;

/** So much of a sewn set as is drawn of it, or one sub-cut, opened. */
export function setOpened({ roles }: StripSet, { strip, seam }: StripCloth, length: Inches, turned = false): Picture {
  const tops = seamsOf(roles.length, strip, seam);
  const order = turned ? [...roles].reverse() : roles;
  const pieces = order.map((role, i) => {
    const [top, bottom] = [tops[i] as Inches, tops[i + 1] as Inches];
    return cloth(role, rectangle(0, top, length, bottom - top));
  });
  return picture({ cloth: pieces });
}

/** Where the strips of an opened set meet, from its upper edge to its lower one. */
export function seamsOf(strips: number, strip: Inches, seam: Inches): readonly Inches[] {
  const depth = strip - 2 * seam;
  return Array.from({ length: strips + 1 }, (_, i) => {
    if (i === 0) return 0;
    return i === strips ? strips * depth + 2 * seam : seam + i * depth;
  });
}

/** The arrows of a set's seams, in the middle of a length of it. */
export function setArrows({ roles, pressedUp }: StripSet, { strip, seam }: StripCloth, length: Inches): Picture {
  const tops = seamsOf(roles.length, strip, seam).slice(1, -1);
  const arrows = tops.map((y, i) =>
    press(at(length / 2, y), at(length / 2, pressedUp[i] === true ? y - 1 : y + 1), (strip - 2 * seam) * 0.42),
  );
  return picture({ arrows });
}

/** A set with its arrows. */
export function setPressed(set: StripSet, pieces: StripCloth): Picture {
  const length = LENGTH * pieces.subCut;
  return together(setOpened(set, pieces, length), setArrows(set, pieces, length));
}

/** A set with its end squared up and the first sub-cuts marked. */
export function setCrosscut(set: StripSet, pieces: StripCloth): Picture {
  const { strip, seam, subCut } = pieces;
  const height = seamsOf(set.roles.length, strip, seam).at(-1) as Inches;
  const lines = Array.from({ length: LENGTH }, (_, i) => (i + 0.5) * subCut).map((x) =>
    line('cut', at(x, 0), at(x, height)),
  );
  return together(setOpened(set, pieces, LENGTH * subCut), picture({ lines }));
}

/** Which way seams that are all pressed to one fabric are pressed, in words. */
export function towardsWords(to: string, other: string, scale: Scale): string {
  const deep = darker([to, other], scale);
  if (deep === null) return 'as the arrows show';
  return deep === 'first' ? 'towards the darker fabric' : 'towards the lighter fabric';
}
