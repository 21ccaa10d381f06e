import { same } from '../../measure/inches.ts';
import type { PatchLeaf, Sash } from '../../quilt/quilt.ts';
import type { WorkedSize } from '../../workroom/workedOut.ts';
import type { Words } from '../book.ts';
import { strong } from '../words.ts';

/** Sashings of one size that are made alike: the strips of one of them, in order, and how many there are. */
export interface SashKind {
  readonly run: Sash['run'];
  readonly reach: Sash['reach'];
  readonly strips: readonly PatchLeaf[];
  readonly count: number;
}

/** The kinds of sashing of a size, those that run down first, those that end with a block before those that run through. */
export function sashKinds({ quilt }: WorkedSize): readonly SashKind[] {
  const byKind = new Map<string, PatchLeaf[]>();
  for (const patch of quilt.patches) {
    const kind = patch.sash?.kind;
    if (kind !== undefined) byKind.set(kind, [...(byKind.get(kind) ?? []), patch]);
  }
  const kinds = [...byKind.values()].map((own): SashKind => {
    const byStrip = new Map(own.map((patch) => [patch.sash?.strip ?? 0, patch]));
    const strips = [...byStrip].sort(([a], [b]) => a - b).map(([, patch]) => patch);
    const { run, reach } = (strips[0] as PatchLeaf).sash as Sash;
    return { run, reach, strips, count: own.length / strips.length };
  });
  return kinds.sort((a, b) => order(a) - order(b));
}

function order({ run, reach }: SashKind): number {
  return (run === 'down' ? 0 : 2) + (reach === 'block' ? 0 : 1);
}

/** "**C**, **D**, **C**": the strips of a sashing by their letters, in order. */
export function stripLetters(size: WorkedSize, { strips }: SashKind): Words {
  return strips.flatMap((strip, i) => [i === 0 ? '' : ', ', strong(letterOf(size, strip))]);
}

/** The strips of the sashing that runs this way and ends with a block, or else runs through. */
export function lettersOf(size: WorkedSize, run: Sash['run']): Words {
  const kind = sashKinds(size).find((one) => one.run === run);
  return kind === undefined ? [] : stripLetters(size, kind);
}

/** The chart's letter of a plain piece of the setting. */
export function letterOf({ cloth }: WorkedSize, { cut, fabric, words }: PatchLeaf): string {
  const [long, wide] = [cut.width.value, cut.height.value].sort((a, b) => b - a) as [number, number];
  const line = cloth.pieces.find(
    (piece) =>
      piece.fabric === fabric &&
      piece.use.some((use) => use.block === null && use.words === words) &&
      same(piece.width.value, long) &&
      same(piece.height.value, wide),
  );
  return line?.letter ?? '';
}
