import type { Method } from '../method.ts';
import { templatePlan } from './template.ts';

/** A quarter of a circle in a square, from two templates and one curved seam. */
export const quarterCircle: Method = {
  id: 'quarter-circle',
  name: 'Quarter circles with templates',
  source: 'Both patches and a seam all round; notches in the middle of the curve; common practice',
  makes: (unit) => unit.kind === 'quarter-circle',
  plan: templatePlan,
};
