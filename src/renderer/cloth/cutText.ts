import type { PieceLine } from '../../shared/cloth/cloth.ts';
import { inchesText, sizeText } from '../../shared/measure/fraction.ts';
import { same } from '../../shared/measure/inches.ts';

/** What a piece is cut to, in words: "3½″ square", "2″ strip", "2½″ × 9″". */
export function cutText({ width, height, cutAs }: PieceLine): string {
  if (cutAs === 'strip-set') return `${inchesText(height.value)} strip`;
  if (same(width.value, height.value)) return `${inchesText(width.value)} square`;
  return sizeText(height.value, width.value);
}
