import type { BundleAnswer } from '../cloth/bundle/bundleFor.ts';
import type { Cloth } from '../cloth/cloth.ts';
import type { Finding } from '../measure/finding.ts';
import type { Pattern, Size } from '../pattern/schema.ts';
import type { Piecing } from '../piecing/piecing.ts';
import type { Edged } from '../pressing/ends.ts';
import type { PressingPlan } from '../pressing/pressing.ts';
import type { Quilt } from '../quilt/quilt.ts';
import type { SizedBlock } from '../quilt/sized.ts';

/** Everything that follows from a pattern: nothing here is stored. */
export interface WorkedOut {
  readonly pattern: Pattern;
  /** The blocks that lower to a drawing and a piecing, by letter order. */
  readonly blocks: readonly WorkedBlock[];
  /** How the blocks are sewn together, the same in every size. */
  readonly assembly: Assembly;
  /** One for each size that can be laid out at all, in the pattern's order. */
  readonly sizes: readonly WorkedSize[];
  /** Of the document, the blocks and every size. */
  readonly findings: readonly Finding[];
}

/** How the blocks of every size are sewn together. */
export interface Assembly {
  readonly way: 'rows' | 'columns' | 'diagonal rows';
  /** Whether the designer has fixed it. */
  readonly pinned: boolean;
  /** One sentence that says why it is this way. */
  readonly why: string;
}

/** A block without regard to size. */
export interface WorkedBlock {
  readonly id: string;
  readonly name: string;
  readonly piecing: Piecing;
  readonly pressing: PressingPlan;
  /** Where its seams meet its neighbours, in grid units. */
  readonly edged: Edged;
  /** Each role of the recipe to the pattern's fabric. */
  readonly fabricOf: Readonly<Record<string, string>>;
}

/** One size, worked out. */
export interface WorkedSize {
  readonly size: Size;
  readonly quilt: Quilt;
  readonly blocks: readonly SizedBlock[];
  readonly pressing: PressingPlan;
  readonly cloth: Cloth;
  /** What the pattern's bundle comes to; absent where the pattern has none. */
  readonly bundle?: BundleAnswer;
  /** Points at which seams meet, as the maker has to match them. */
  readonly points: number;
  readonly findings: readonly Finding[];
}

export type { SizedBlock, SizedUnit } from '../quilt/sized.ts';
