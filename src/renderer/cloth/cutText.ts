import type { PieceLine } from '../../shared/cloth/cloth.ts';
import { same } from '../../shared/measure/inches.ts';
import type { Ruler } from '../../shared/measure/ruler.ts';

/** What a piece is cut to, in words: "3½″ square", "2″ strip", "2½″ × 9″". */
export function cutText({ width, height, cutAs }: PieceLine, ruler: Ruler): string {
  if (cutAs === 'strip-set') return `${ruler.length(height.value)} strip`;
  if (same(width.value, height.value)) return `${ruler.length(width.value)} square`;
  return ruler.size(height.value, width.value);
}
