import { longer, same } from '../measure/inches.ts';
import { count } from '../measure/traced.ts';
import type { House, Pattern } from '../pattern/schema.ts';
import type { PatchLeaf, PatchUse, Quilt } from '../quilt/quilt.ts';
import type { PieceLine, PieceUse } from './cloth.ts';
import { joining } from './join.ts';
import { type Letters, patchKey } from './letters.ts';

/** What the pieces of a setting are for, as the fabric chart says it. */
const UNITS: Readonly<Record<PatchUse, string>> = {
  sashing: 'sashing',
  cornerstone: 'cornerstones',
  'border-corner': 'border corners',
  filler: 'plain pieces',
};

/**
 * The lines of the chart for what stands between the blocks: sashing and cornerstones, one line for each letter. A
 * sashing longer than the cloth is wide is joined, as borders are.
 */
export function settingLines(quilt: Quilt, pattern: Pattern, letters: Letters): readonly PieceLine[] {
  return patchLines(
    quilt.patches.filter(({ border }) => border === undefined),
    pattern,
    letters,
  );
}

/** One line for each letter; two where a print has a direction and pieces lie both ways. */
export function patchLines(all: readonly PatchLeaf[], pattern: Pattern, letters: Letters): readonly PieceLine[] {
  const byLetter = new Map<string, PatchLeaf[]>();
  for (const patch of all) {
    const letter = letters[patchKey(patch)] ?? '';
    const own = byLetter.get(letter);
    if (own === undefined) byLetter.set(letter, [patch]);
    else own.push(patch);
  }
  return [...byLetter].flatMap(([letter, patches]) => linesFor(letter, patches, pattern));
}

function linesFor(letter: string, patches: readonly PatchLeaf[], { fabrics, house }: Pattern): readonly PieceLine[] {
  const [{ fabric }] = patches as readonly [PatchLeaf, ...PatchLeaf[]];
  if (fabrics.find(({ id }) => id === fabric)?.direction === undefined) return [settingLine(letter, patches, house)];
  const stands = ({ cut }: PatchLeaf) => longer(cut.height.value, cut.width.value);
  const standing = patches.filter(stands);
  const lying = patches.filter((patch) => !stands(patch));
  return [
    ...(lying.length === 0 ? [] : [{ ...settingLine(letter, lying, house), upright: true } as const]),
    ...(standing.length === 0 ? [] : [lengthwise(settingLine(letter, standing, house))]),
  ];
}

/** The same pieces cut along the cloth, where nothing has to be joined. */
export function lengthwise({ joined: _joined, lostInJoin: _lost, ...line }: PieceLine): PieceLine {
  return { ...line, upright: true, lengthwise: true };
}

function settingLine(letter: string, patches: readonly PatchLeaf[], house: House): PieceLine {
  const [first] = patches as readonly [PatchLeaf, ...PatchLeaf[]];
  const { width, height } = first.cut;
  const lies = width.value >= height.value;
  const [long, wide] = lies ? [width, height] : [height, width];
  const many = count(patches.length, wordFor(first, patches.length));
  return {
    letter,
    fabric: first.fabric,
    width: long,
    height: wide,
    count: many,
    spare: 0,
    use: usesOf(patches),
    cutAs: longer(long.value, house.usableWidth) ? 'long-strip' : 'piece',
    ...joining(many, long, house),
  };
}

function wordFor({ cut }: PatchLeaf, many: number): string {
  const word = same(cut.width.value, cut.height.value) ? 'square' : 'strip';
  return many === 1 ? word : `${word}s`;
}

/** One use for each place the pieces go to. */
function usesOf(patches: readonly PatchLeaf[]): readonly PieceUse[] {
  const byWords = new Map<string, PatchLeaf[]>();
  for (const patch of patches) byWords.set(patch.words, [...(byWords.get(patch.words) ?? []), patch]);
  return [...byWords].map(([words, own]) => {
    const { use, border } = own[0] as PatchLeaf;
    const unit = border ?? UNITS[use];
    return { block: null, unit, words, patches: own.length, count: own.length };
  });
}
