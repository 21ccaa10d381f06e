import { type Inches, same } from '../../measure/inches.ts';
import { lengthOf, type Packed, wordsIn } from './kinds.ts';

/** The best plan found so far and the best bound proved so far. */
export class Search {
  strips: readonly Packed[] = [];
  length: Inches = 0;
  bound: Inches = 0;

  /** Whether no plan can be shorter than the one there is. */
  get proven(): boolean {
    return same(this.length, this.bound);
  }

  /** Takes a bound if it is better. It never passes the plan but by rounding, and then the two are equal. */
  raise(bound: Inches): void {
    const passed = bound > this.length && same(bound, this.length);
    this.bound = Math.max(this.bound, passed ? this.length : bound);
  }

  /** Keeps the shorter plan; of equally short ones the one with least to read. */
  offer(strips: readonly Packed[]): void {
    const length = lengthOf(strips);
    const first = this.strips.length === 0;
    const shorter = length < this.length && !same(length, this.length);
    const plainer = same(length, this.length) && wordsIn(strips) < wordsIn(this.strips);
    if (first || shorter || plainer) [this.strips, this.length] = [strips, length];
  }
}
