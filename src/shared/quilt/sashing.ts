import type { Box } from '../drawing/turn.ts';
import { same } from '../measure/inches.ts';
import { given, named, plus, type Traced } from '../measure/traced.ts';
import type { House, Sashing, Setting, Size } from '../pattern/schema.ts';
import type { Part } from '../piecing/piecing.ts';
import { cutTo } from './cut.ts';
import type { PatchLeaf, Sash } from './quilt.ts';

/** The sashing of one size: its strips with the widths they have there. */
export interface Sashes {
  readonly strips: readonly SashStrip[];
  /** Finished width of a whole sashing. */
  readonly width: Traced;
  readonly cornerstones: string | null;
  readonly outside: boolean;
}

interface SashStrip {
  readonly fabric: string;
  readonly width: Traced;
}

/** The sashing of a setting in one size; null when it has none there. */
export function sashesOf({ sashing }: Pick<Setting, 'sashing'>, size: Size): Sashes | null {
  if (sashing === undefined) return null;
  const strips = widths(sashing, size).filter(({ width }) => !same(width.value, 0));
  const [first, ...rest] = strips.map(({ width }) => width);
  if (first === undefined) return null;
  const width = rest.length === 0 ? first : named(plus(first, ...rest), 'sashing finished');
  return { strips, width, cornerstones: sashing.cornerstones ?? null, outside: sashing.outside === true };
}

function widths(sashing: Sashing, size: Size): readonly SashStrip[] {
  const name = sashing.strips.length === 1 ? 'sashing finished' : 'strip finished';
  return sashing.strips.map(({ fabric, width }, i) => ({ fabric, width: given(size.sashing?.[i] ?? width, name) }));
}

/** A sashing as a part of any tree. */
type SashPart = Part<PatchLeaf>;

/** What sashings are called in rows and columns; on point they are called otherwise. */
const WORDS: Readonly<Record<Sash['run'], string>> = {
  down: 'Sashing between columns',
  across: 'Sashing between rows',
};

/**
 * One sashing: its strips side by side, sewn together before they are sewn to anything else.
 * @param box finished inches; @param length its finished length, as a sum
 */
export function sashPart(
  { strips }: Sashes,
  run: Sash['run'],
  box: Box,
  length: Traced,
  reach: Sash['reach'],
  house: House,
  words: string = WORDS[run],
): SashPart {
  const long = cutTo(length, house);
  let at = run === 'down' ? box.x : box.y;
  const parts = strips.map(({ fabric, width }, i): PatchLeaf => {
    const own = run === 'down' ? { ...box, x: at, width: width.value } : { ...box, y: at, height: width.value };
    at += width.value;
    const wide = cutTo(width, house);
    const cut = run === 'down' ? { width: wide, height: long } : { width: long, height: wide };
    const kind = `sashing ${run} ${reach}`;
    return {
      kind: 'patch',
      use: 'sashing',
      name: `${kind} ${i}`,
      words,
      fabric,
      box: own,
      cut,
      sash: { run, reach, strip: i, width: width.value, kind },
    };
  });
  const [only] = parts;
  if (parts.length === 1 && only !== undefined) return only;
  return { kind: 'row', along: run === 'down' ? 'across' : 'down', parts, box, name: 'sashing' };
}

/** The square where two sashings cross. */
export function cornerstone(fabric: string, { width }: Sashes, x: number, y: number, house: House): PatchLeaf {
  const box = { x, y, width: width.value, height: width.value };
  const cut = cutTo(width, house);
  const cutSize = { width: cut, height: cut };
  return { kind: 'patch', use: 'cornerstone', name: 'cornerstone', words: 'Cornerstones', fabric, box, cut: cutSize };
}
