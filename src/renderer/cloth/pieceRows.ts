import type { PieceLine } from '../../shared/cloth/cloth.ts';
import type { WorkedOut, WorkedSize } from '../../shared/workroom/workedOut.ts';

/** One line of the cutting chart in every size that has it. */
export interface PieceRow {
  readonly key: string;
  readonly letter: string;
  readonly fabric: string;
  readonly lines: readonly { readonly size: WorkedSize; readonly line: PieceLine | undefined }[];
}

/** A letter has two lines where its print has a direction and its pieces lie both ways in the quilt. */
export function lineKey({ letter, lengthwise }: PieceLine): string {
  return lengthwise ? `${letter} along` : letter;
}

/** The cutting charts of all sizes side by side, in the order of the letters as each fabric has them. */
export function pieceRows(worked: WorkedOut): readonly PieceRow[] {
  const first = new Map<string, PieceLine>();
  for (const { cloth } of worked.sizes) {
    for (const line of cloth.pieces) if (!first.has(lineKey(line))) first.set(lineKey(line), line);
  }
  return [...first].map(([key, { letter, fabric }]) => ({
    key,
    letter,
    fabric,
    lines: worked.sizes.map((size) => ({ size, line: size.cloth.pieces.find((line) => lineKey(line) === key) })),
  }));
}

/** The uses of a piece without its repeats: "Block A, flying geese, large square". */
export function usesOf({ lines }: PieceRow): readonly string[] {
  return [...new Set(lines.flatMap(({ line }) => line?.use.map(({ words }) => words) ?? []))];
}

/** How a piece of a print that has a direction lies on the cloth; null where it may lie as it likes. */
export function liesWords({ upright, lengthwise, width, height }: PieceLine): string | null {
  if (upright === undefined) return null;
  if (Math.abs(width.value - height.value) < 1e-6) return 'never turned';
  return lengthwise ? 'long side along the cloth' : 'long side across the cloth';
}
