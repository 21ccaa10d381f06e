import type { PieceLine, Strip } from '../../shared/cloth/cloth.ts';
import { inchesText, sizeText } from '../../shared/measure/fraction.ts';
import { same } from '../../shared/measure/inches.ts';
import type { Units } from '../../shared/measure/metric.ts';

/** The cut size as the chart says it: "3⅛″ square", "1⅝″ × WOF", "47½″ × 3″". */
export function cutSizeText(line: PieceLine, units: Units = 'inches'): string {
  const { width, height } = line;
  if (isAcross(line)) return `${inchesText(height.value, units)} × WOF`;
  return same(width.value, height.value)
    ? `${inchesText(width.value, units)} square`
    : sizeText(width.value, height.value, units);
}

/** Whole strips across the cloth: for strip sets and for binding. */
function isAcross({ cutAs, use }: PieceLine): boolean {
  return (
    cutAs === 'strip-set' ||
    (cutAs === 'long-strip' && use.some(({ block, patches }) => block === null && patches === 0))
  );
}

/** What becomes of the strips of one line: "sub-cut into 60 of 1⅝″", "joined from 3 strips"; empty for single pieces. */
export function afterCutText({ subCut, joined }: PieceLine, units: Units = 'inches'): string {
  if (subCut !== undefined) {
    const { sets, count, length } = subCut;
    const many = sets.value === 1 ? '1 set' : `${sets.value} sets`;
    return `${many}, sub-cut into ${count.value} of ${inchesText(length.value, units)}`;
  }
  return joined === undefined ? '' : `joined from ${joined.value} strips`;
}

/** What pieces are for, each use once. */
export function usedFor({ use }: PieceLine): string {
  return [...new Set(use.map(({ words }) => words))].join('; ');
}

/** What one strip is cut into: "A × 8, B × 2". */
export function stripPiecesText({ pieces }: Strip): string {
  return pieces.map(({ letter, count }) => (count === 1 ? letter : `${letter} × ${count}`)).join(', ');
}
