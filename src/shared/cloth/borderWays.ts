import type { Traced } from '../measure/traced.ts';
import { named } from '../measure/traced.ts';
import type { Border, Pattern } from '../pattern/schema.ts';
import type { Quilt } from '../quilt/quilt.ts';
import { stripLines } from './borderPieces.ts';
import { cuttingPlan } from './cuttingPlan.ts';
import { borderKey } from './letters.ts';
import { yardsFor } from './yards.ts';

/** One way of cutting a border's strips, with the cloth it takes when nothing else is cut from that cloth. */
export interface BorderWay {
  readonly way: 'straight' | 'diagonal' | 'lengthwise';
  /** Whether the border is cut this way. */
  readonly chosen: boolean;
  /** Joins sewn in all of the border's strips together; none when every strip is in one piece. */
  readonly joins: number;
  /** Length of cloth the strips take, inches. */
  readonly cloth: Traced;
  /** Yards to buy. */
  readonly yards: Traced;
}

/**
 * What the ways of cutting a border's strips take: across the cloth, joined straight or on the diagonal, or along the cloth in
 * one piece. Empty where the border is left out.
 */
export function borderWays(quilt: Quilt, border: Border, pattern: Pattern): readonly BorderWay[] {
  const { house } = pattern;
  const letters = { [borderKey(border.id, 'sides')]: 'S', [borderKey(border.id, 'ends')]: 'E' };
  return (['straight', 'diagonal', 'lengthwise'] as const).flatMap((way): BorderWay[] => {
    const lines = stripLines(quilt, cutThisWay(border, way), pattern, letters);
    if (lines.length === 0) return [];
    const plan = cuttingPlan(border.fabric, lines, house);
    const joins = lines.reduce((sum, { joined }) => sum + Math.max(0, (joined?.value ?? 1) - 1), 0);
    const cloth = named(plan.length, 'of strips');
    return [{ way, chosen: way === wayOf(border), joins, cloth, yards: yardsFor(cloth, house) }];
  });
}

function wayOf({ lengthwise, joins }: Border): BorderWay['way'] {
  return lengthwise ? 'lengthwise' : (joins ?? 'straight');
}

function cutThisWay(border: Border, way: BorderWay['way']): Border {
  const { lengthwise: _along, joins: _joins, ...rest } = border;
  return way === 'lengthwise' ? { ...rest, lengthwise: true } : { ...rest, joins: way };
}
