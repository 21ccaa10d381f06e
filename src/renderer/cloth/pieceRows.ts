import type { PieceLine } from '../../shared/cloth/cloth.ts';
import type { WorkedOut, WorkedSize } from '../../shared/workroom/workedOut.ts';

/** One letter of the cutting chart with its line in every size that has it. */
export interface PieceRow {
  readonly letter: string;
  readonly fabric: string;
  readonly lines: readonly { readonly size: WorkedSize; readonly line: PieceLine | undefined }[];
}

/** The cutting charts of all sizes side by side, in the order of the letters as each fabric has them. */
export function pieceRows(worked: WorkedOut): readonly PieceRow[] {
  const first = new Map<string, PieceLine>();
  for (const { cloth } of worked.sizes) {
    for (const line of cloth.pieces) if (!first.has(line.letter)) first.set(line.letter, line);
  }
  return [...first.values()].map(({ letter, fabric }) => ({
    letter,
    fabric,
    lines: worked.sizes.map((size) => ({ size, line: size.cloth.pieces.find((line) => line.letter === letter) })),
  }));
}

/** The uses of a piece without its repeats: "Block A, flying geese, large square". */
export function usesOf({ lines }: PieceRow): readonly string[] {
  return [...new Set(lines.flatMap(({ line }) => line?.use.map(({ words }) => words) ?? []))];
}
