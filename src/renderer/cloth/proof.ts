import type { FabricNeed } from '../../shared/cloth/cloth.ts';
import { inchesText } from '../../shared/measure/fraction.ts';
import { toRuler } from '../../shared/measure/inches.ts';

/** How good a cutting plan is, in a sentence that says no more than is proved. */
export function proofWords({ plan, least }: FabricNeed): string {
  const strips = plan.stripCount === 1 ? '1 strip' : `${plan.stripCount} strips`;
  const length = inchesText(plan.length.value);
  if (plan.proven) return `${strips}, ${length} of cloth; less cannot do.`;
  const bound = inchesText(toRuler(plan.bound, 0.125, 'down'));
  const known = `${strips}, ${length} of cloth; no plan can take less than ${bound}`;
  return least ? `${known}, and that comes to the same yards.` : `${known}.`;
}
