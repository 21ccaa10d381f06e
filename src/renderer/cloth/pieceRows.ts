import type { PieceLine } from '../../shared/cloth/cloth.ts';
import { same } from '../../shared/measure/inches.ts';
import type { WorkedOut, WorkedSize } from '../../shared/workroom/workedOut.ts';

/** One letter of the cutting chart with its line in every size that has it. */
export interface PieceRow {
  readonly letter: string;
  readonly fabric: string;
  readonly lines: readonly { readonly size: WorkedSize; readonly line: PieceLine | undefined }[];
  /** A line of any size, for what is the same in all of them. */
  readonly any: PieceLine;
  /** True when every size cuts it to the same measure. */
  readonly alike: boolean;
}

/** The cutting charts of all sizes side by side, in the order of the letters as each fabric has them. */
export function pieceRows(worked: WorkedOut): readonly PieceRow[] {
  const first = new Map<string, PieceLine>();
  for (const { cloth } of worked.sizes) {
    for (const line of cloth.pieces) if (!first.has(line.letter)) first.set(line.letter, line);
  }
  return [...first.values()].map((any) => {
    const lines = worked.sizes.map((size) => ({
      size,
      line: size.cloth.pieces.find(({ letter }) => letter === any.letter),
    }));
    const alike = lines.every(({ line }) => line === undefined || sameCut(line, any));
    return { letter: any.letter, fabric: any.fabric, lines, any, alike };
  });
}

function sameCut(a: PieceLine, b: PieceLine): boolean {
  return same(a.width.value, b.width.value) && same(a.height.value, b.height.value);
}

/** The uses of a piece without its repeats: "Block A, flying geese, large square". */
export function usesOf({ lines }: PieceRow): readonly string[] {
  return [...new Set(lines.flatMap(({ line }) => line?.use.map(({ words }) => words) ?? []))];
}
