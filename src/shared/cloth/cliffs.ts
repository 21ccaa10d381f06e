import type { Inches } from '../measure/inches.ts';
import { same } from '../measure/inches.ts';
import type { Traced } from '../measure/traced.ts';
import { type ClothInput, clothFor } from './clothFor.ts';

/** Usable widths that cloth is met with, inches (common practice). */
const WIDTHS: readonly Inches[] = [40, 41, 42, 43, 44];

/** What one fabric takes at one usable width. */
export interface AtWidth {
  readonly width: Inches;
  readonly strips: number;
  /** Inches of cloth in strips. */
  readonly length: Inches;
  readonly yards: Traced;
}

/** What one fabric takes as the cloth is wider or narrower. */
export interface Cliff {
  readonly fabric: string;
  /** Widest last. */
  readonly at: readonly AtWidth[];
  /** Widths below which it takes more cloth than at them: the cliffs. */
  readonly below: readonly Inches[];
  /** The same of what is bought: yards, rounded up. */
  readonly yardsBelow: readonly Inches[];
}

/**
 * What changes, fabric by fabric, with the width of the cloth: everything is worked out anew at each width, because strip sets,
 * joins and binding change with it too. Backing is not among it.
 * @param input one size as it is; its own width does not matter
 */
export function cliffsFor(input: ClothInput, widths: readonly Inches[] = WIDTHS): readonly Cliff[] {
  const ordered = [...widths].sort((a, b) => a - b);
  const at = ordered.map((width) => ({ width, needs: needsAt(input, width) }));
  const fabrics = at.at(-1)?.needs.map(({ fabric }) => fabric) ?? [];
  return fabrics.map((fabric): Cliff => {
    const steps = at.flatMap(({ width, needs }): AtWidth[] => {
      const need = needs.find((one) => one.fabric === fabric);
      if (need === undefined) return [];
      return [{ width, strips: need.plan.stripCount, length: need.plan.length.value, yards: need.yards }];
    });
    return {
      fabric,
      at: steps,
      below: fallsIn(steps, ({ length }) => length),
      yardsBelow: fallsIn(steps, ({ yards }) => yards.value),
    };
  });
}

function needsAt(input: ClothInput, usableWidth: Inches): ReturnType<typeof clothFor>['needs'] {
  const { pattern } = input;
  return clothFor({ ...input, pattern: { ...pattern, house: { ...pattern.house, usableWidth } } }).needs;
}

function fallsIn(steps: readonly AtWidth[], amount: (step: AtWidth) => number): readonly Inches[] {
  return steps.flatMap((step, i) => {
    const narrower = steps[i - 1];
    if (narrower === undefined || same(amount(narrower), amount(step))) return [];
    return amount(narrower) > amount(step) ? [step.width] : [];
  });
}
