import { same } from '../../measure/inches.ts';
import type { PatchLeaf, Sash } from '../../quilt/quilt.ts';
import type { WorkedSize } from '../../workroom/workedOut.ts';

/** Sashings of one size that are made alike: the strips of one of them, in order, and how many there are. */
export interface SashKind {
  readonly run: Sash['run'];
  readonly reach: Sash['reach'];
  readonly strips: readonly PatchLeaf[];
  readonly count: number;
}

/** The kinds of sashing of a size, those that run down first. */
export function sashKinds({ quilt }: WorkedSize): readonly SashKind[] {
  return (['down', 'across'] as const).flatMap((run) =>
    (['block', 'whole'] as const).flatMap((reach): SashKind[] => {
      const own = quilt.patches.filter(({ sash }) => sash?.run === run && sash.reach === reach);
      const byStrip = new Map<number, PatchLeaf[]>();
      for (const patch of own) {
        const strip = patch.sash?.strip ?? 0;
        byStrip.set(strip, [...(byStrip.get(strip) ?? []), patch]);
      }
      const strips = [...byStrip.values()].map(([first]) => first as PatchLeaf);
      return strips.length === 0 ? [] : [{ run, reach, strips, count: own.length / strips.length }];
    }),
  );
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
