import type { FabricNeed, SheetNeed } from '../../shared/cloth/cloth.ts';
import type { Ruler } from '../../shared/measure/ruler.ts';

/** How good a cutting plan is, in a sentence that says no more than is proved. */
export function proofWords({ plan, least }: FabricNeed, ruler: Ruler): string {
  const strips = plan.stripCount === 1 ? '1 strip' : `${plan.stripCount} strips`;
  const length = ruler.length(plan.length.value);
  if (plan.proven) return `${strips}, ${length} of cloth; less cannot do.`;
  const bound = ruler.about(plan.bound, 'down');
  const known = `${strips}, ${length} of cloth; no plan can take less than ${bound}`;
  return least ? `${known}, and that comes to the same ${ruler.clothUnit}s.` : `${known}.`;
}

/** How good a plan of sheets is, in a sentence. */
export function sheetWords({ count, name, bound, proven }: SheetNeed): string {
  const sheets = `${count.value} ${count.value === 1 ? name : `${name}s`}`;
  if (proven) return `${sheets}; fewer cannot do.`;
  return `${sheets}; no plan can do with fewer than ${bound}.`;
}
