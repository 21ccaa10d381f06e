/** How far a long sum is. */
export interface Step {
  /** What is worked out now, as a designer would call it: "Block A", "King". */
  readonly doing: string;
  /** Steps behind it, of so many. */
  readonly done: number;
  readonly of: number;
}

/** A sum that can be told, and stopped, between its steps: it says each one before it begins it. */
export type Steps<Answer> = Generator<Step, Answer, void>;

/** The answer of a sum in steps, worked out in one go. */
export function toTheEnd<Answer>(steps: Steps<Answer>): Answer {
  for (;;) {
    const next = steps.next();
    if (next.done === true) return next.value;
  }
}
