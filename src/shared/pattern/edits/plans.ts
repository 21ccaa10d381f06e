import type { Edit } from '../edit.ts';
import { type KeptPlan, keptPlanSchema } from '../keptPlan.ts';
import type { Pattern } from '../schema.ts';

function nameOf({ fabrics }: Pattern, id: string): string {
  return fabrics.find((fabric) => fabric.id === id)?.name ?? id;
}

/** Keeps the plan that a proof found for one fabric of one size; those of sizes and fabrics that are gone are let go. */
export const keepPlan: Edit<{ readonly plan: KeptPlan }> = {
  id: 'keep-plan',
  name: ({ plan }, pattern) => `Cut ${nameOf(pattern, plan.fabric)} by the proven plan`,
  apply: (pattern, { plan }) => {
    const known = ({ size, fabric }: KeptPlan) =>
      pattern.sizes.some(({ id }) => id === size) && pattern.fabrics.some(({ id }) => id === fabric);
    if (!known(plan) || !keptPlanSchema.safeParse(plan).success) return pattern;
    const before = pattern.plans ?? [];
    if (before.some((one) => JSON.stringify(one) === JSON.stringify(plan))) return pattern;
    const others = before.filter((one) => known(one) && (one.size !== plan.size || one.fabric !== plan.fabric));
    return { ...pattern, plans: [...others, plan] };
  },
};

/** Goes back to the plan that is found at once. */
export const forgetPlan: Edit<{ readonly size: string; readonly fabric: string }> = {
  id: 'forget-plan',
  name: ({ fabric }, pattern) => `Cut ${nameOf(pattern, fabric)} by the usual plan`,
  apply: (pattern, { size, fabric }) => {
    const { plans = [], ...rest } = pattern;
    const left = plans.filter((plan) => plan.size !== size || plan.fabric !== fabric);
    if (left.length === plans.length) return pattern;
    return left.length === 0 ? rest : { ...rest, plans: left };
  },
};
