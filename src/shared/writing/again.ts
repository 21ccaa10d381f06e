import type { Step, Words } from './book.ts';

/** Fewer steps than this are told again rather than pointed back to. */
const WORTH = 2;

/**
 * The steps a pattern has told so far, so that a unit sewn like an earlier one points back to its steps and tells only
 * what is different. A maker who has sewn one set of half-square triangles need not read how a second time.
 */
export interface Told {
  /**
   * The steps of one unit, made shorter where its first stages run word for word as stages told before; the step that
   * stands for them shows the last of them in this unit's fabrics.
   */
  shorten(method: string, steps: readonly Step[]): readonly Step[];
  /** Keeps what was told at length, under the number of its first step. */
  keep(method: string, steps: readonly Step[], firstNumber: number): void;
}

export function tell(): Told {
  const firstOf = new Map<string, number>();
  return {
    shorten(method, steps) {
      for (let many = steps.length; many >= WORTH; many -= 1) {
        const first = firstOf.get(keyOf(method, steps.slice(0, many)));
        if (first !== undefined) return [pointedBack(steps, many, first), ...steps.slice(many)];
      }
      return steps;
    },
    keep(method, steps, firstNumber) {
      for (let many = WORTH; many <= steps.length; many += 1) {
        const key = keyOf(method, steps.slice(0, many));
        if (!firstOf.has(key)) firstOf.set(key, firstNumber);
      }
    },
  };
}

function keyOf(method: string, steps: readonly Step[]): string {
  return JSON.stringify([method, ...steps.map(({ words }) => words.map(said))]);
}

/** A sentence as it reads, whatever sums stand behind its numbers. */
function said(words: Words): readonly unknown[] {
  return words.map((part) => (typeof part === 'object' && 'field' in part ? [part.show, part.field.value] : part));
}

function pointedBack(steps: readonly Step[], many: number, first: number): Step {
  const last = steps[many - 1] as Step;
  const counts = many === steps.length ? last.perSize : steps[0]?.perSize;
  return {
    words: [[`Sew these as steps ${first} to ${first + many - 1} show.`]],
    figures: last.figures,
    ...(counts === undefined ? {} : { perSize: counts }),
  };
}
